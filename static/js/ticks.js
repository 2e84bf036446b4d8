// Ticks with bad signal, on a shopping list or a shot list: a press shows at once
// and is written down in this browser; it is sent when there is a connection, and
// again until the server has answered. Without this file a press is a form.
//
// A list (data-ticks: where its presses are posted) holds a form (data-tick: the
// state that counts as done) for each thing: a hidden field says which, its
// buttons the states. A form of one button goes to and fro between yes and no.
"use strict";

for (const list of document.querySelectorAll("[data-ticks]:has([data-tick])")) {
  const action = list.dataset.ticks;
  const key = `ticks ${action}`;
  const notice = list.querySelector("[data-unsent]");
  const forms = [...list.querySelectorAll("form[data-tick]")];
  const buttonsOf = (form) => [...form.querySelectorAll("button")];
  const thingOf = (form) => form.querySelector("input[type=hidden]");
  const isDone = (form) => buttonsOf(form).some((b) => b.getAttribute("aria-pressed") === "true" && (b.value === form.dataset.tick || buttonsOf(form).length === 1));
  const names = { thing: thingOf(forms[0]).name, state: buttonsOf(forms[0])[0].name };
  let sending = false;

  // what is not sent yet: thing → state, the last press only
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

  const show = (form, state) => {
    const done = state === form.dataset.tick;
    const buttons = buttonsOf(form);
    for (const button of buttons) button.setAttribute("aria-pressed", String(buttons.length > 1 ? button.value === state : done));
    if (buttons.length === 1) buttons[0].value = done ? "no" : "yes";
    form.closest("li").classList.toggle("ticked", done);
  };
  const tell = () => {
    for (const count of list.querySelectorAll("[data-left]")) {
      const counted = forms.filter((form) => count.closest("section").contains(form));
      const done = counted.filter(isDone).length;
      count.textContent = count.dataset.left.replace("{open}", counted.length - done).replace("{done}", done).replace("{all}", counted.length);
    }
    const waiting = Object.keys(unsent()).length;
    notice.hidden = waiting === 0 || sending;
    notice.textContent = `? ${waiting} not sent yet: kept here until there is a connection`;
  };

  const send = async () => {
    if (sending) return;
    sending = true;
    try {
      for (let all = unsent(); Object.keys(all).length; all = unsent()) {
        const [thing, state] = Object.entries(all)[0];
        const answer = await fetch(action, {
          method: "POST", keepalive: true,
          body: new URLSearchParams({ [names.thing]: thing, [names.state]: state }),
        });
        // signed out meanwhile: the press waits until somebody signs in; a
        // refusal of this thing will not get better by asking again
        const away = answer.redirected && new URL(answer.url).pathname.startsWith("/sign-in");
        const settled = !away && (answer.ok || [400, 404, 409, 422].includes(answer.status));
        if (!settled) break;
        const now = unsent();
        if (now[thing] === state) delete now[thing];
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
      const state = (event.submitter ?? buttonsOf(form)[0]).value;
      if (!keep({ ...unsent(), [thingOf(form).value]: state })) return;
      event.preventDefault();
      show(form, state);
      tell();
      send();
    });
  }

  // presses of an earlier visit that never arrived
  for (const [thing, state] of Object.entries(unsent())) {
    const form = forms.find((f) => thingOf(f).value === thing);
    if (form) show(form, state);
  }
  tell();
  send();
  addEventListener("online", send);
  document.addEventListener("visibilitychange", () => { if (!document.hidden) send(); });
  setInterval(() => { if (Object.keys(unsent()).length) send(); }, 15000);
}
