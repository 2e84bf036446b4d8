// Ticks on a shopping list, with bad signal: a press shows at once and is
// written down in this browser; it is sent when there is a connection, and
// again until the server has answered. Without this file a press is a form.
"use strict";

for (const list of document.querySelectorAll("[data-ticks]:has([data-tick])")) {
  const action = list.dataset.ticks;
  const key = `ticks ${action}`;
  const notice = list.querySelector("[data-unsent]");
  const left = list.querySelector("[data-left]");
  const forms = [...list.querySelectorAll("form[data-tick]")];
  const itemOf = (form) => form.elements.namedItem("item").value;
  let sending = false;

  // what is not sent yet: item → "yes" or "no", the last press only
  const unsent = () => {
    try { return JSON.parse(localStorage.getItem(key)) ?? {}; } catch { return {}; }
  };
  const keep = (all) => {
    try {
      if (Object.keys(all).length) localStorage.setItem(key, JSON.stringify(all));
      else localStorage.removeItem(key);
      return true;
    } catch { return false; } // storage refused: the form is sent as usual
  };

  const show = (form, ticked) => {
    const button = form.querySelector("button");
    button.setAttribute("aria-pressed", String(ticked));
    button.value = ticked ? "no" : "yes";
    form.closest("li").classList.toggle("ticked", ticked);
  };
  const tell = () => {
    const open = forms.filter((f) => f.querySelector("button").getAttribute("aria-pressed") !== "true").length;
    if (left) left.textContent = `${open} of ${forms.length} still to get`;
    const count = Object.keys(unsent()).length;
    notice.hidden = count === 0 || sending;
    notice.textContent = `? ${count} not sent yet: kept here until there is a connection`;
  };

  const send = async () => {
    if (sending) return;
    sending = true;
    try {
      for (let all = unsent(); Object.keys(all).length; all = unsent()) {
        const [item, ticked] = Object.entries(all)[0];
        const answer = await fetch(action, {
          method: "POST", keepalive: true,
          body: new URLSearchParams({ item, ticked }),
        });
        // signed out meanwhile: the press waits until somebody signs in; a
        // refusal of this item will not get better by asking again
        const away = answer.redirected && new URL(answer.url).pathname.startsWith("/sign-in");
        const settled = !away && (answer.ok || [400, 404, 409, 422].includes(answer.status));
        if (!settled) break;
        const now = unsent();
        if (now[item] === ticked) delete now[item];
        keep(now);
      }
    } catch {
      // no connection: try again later
    }
    sending = false;
    tell();
  };

  for (const form of forms) {
    form.addEventListener("submit", (event) => {
      const ticked = form.querySelector("button").value;
      if (!keep({ ...unsent(), [itemOf(form)]: ticked })) return;
      event.preventDefault();
      show(form, ticked === "yes");
      tell();
      send();
    });
  }

  // presses of an earlier visit that never arrived
  for (const [item, ticked] of Object.entries(unsent())) {
    const form = forms.find((f) => itemOf(f) === item);
    if (form) show(form, ticked === "yes");
  }
  tell();
  send();
  addEventListener("online", send);
  document.addEventListener("visibilitychange", () => { if (!document.hidden) send(); });
  setInterval(() => { if (Object.keys(unsent()).length) send(); }, 15000);
}
