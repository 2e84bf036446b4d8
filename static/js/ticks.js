// Ticks with bad signal, on a shopping list or a shot list: a press shows at once
// and is written down in this browser; it is sent when there is a connection, and
// again until the server has answered. Without this file a press is a form.
//
// A list (data-ticks: where its presses are posted) holds a form (data-tick: the
// state that counts as done) for each thing: a hidden field says which, its
// buttons the states. A form of one button goes to and fro between yes and no.
//
// A list with data-kept-ticks sends its presses there, each with its age, which
// phone gave it and as which of its presses. The answer says which state holds:
// another one if somebody else gave it later.
"use strict";

// How long a press is let wait for its answer, in milliseconds: one that is still
// on its way then is sent again, with its age as it is by then.
const patience = 20000;
// The longest age that is believed, a week, and the longest the server takes.
const longest = 7 * 24 * 3600 * 1000;

const read = (key) => {
  try { return JSON.parse(localStorage.getItem(key)) ?? {}; } catch { return {}; }
};
const write = (key, all) => {
  try {
    if (Object.keys(all).length) localStorage.setItem(key, JSON.stringify(all));
    else localStorage.removeItem(key);
    return true;
  } catch { return false; } // storage refused: the form is sent as usual
};

// press is a state as it is kept: with the moment, by both clocks there are.
const press = (state) => ({ state, at: Date.now(), page: performance.timeOrigin, since: performance.now() });

// signed adds this phone's name for itself, and its count of presses.
const signed = (one) => {
  const phone = read("phone");
  phone.by ??= [...crypto.getRandomValues(new Uint32Array(3))].map((n) => n.toString(36)).join("-");
  phone.nth = (phone.nth ?? 0) + 1;
  return write("phone", phone) ? { ...one, ...phone } : one; // one count is not given twice
};

// age is how old a press is, in milliseconds. The steady clock counts from when
// its page was opened, and stands still on many phones while they sleep: what it
// says is the least. The clock on the wall goes on, and need not be right to tell
// how much has passed, unless it was set meanwhile: then it may say anything, and
// below nothing or beyond a week it is not believed. When neither knows, the press
// is taken to be old, and gives way to any other.
const age = ({ at, page, since }) => {
  const steady = page === performance.timeOrigin ? performance.now() - since : undefined;
  const wall = Date.now() - at;
  if (wall >= 0 && wall <= longest) return Math.round(Math.max(wall, steady ?? 0));
  return Math.round(steady ?? longest);
};

for (const list of document.querySelectorAll("[data-ticks]:has([data-tick])")) {
  const action = list.dataset.ticks;
  const kept = list.dataset.keptTicks;
  const notice = list.querySelector("[data-unsent]");
  const forms = [...list.querySelectorAll("form[data-tick]")];
  const buttonsOf = (form) => [...form.querySelectorAll("button")];
  const thingOf = (form) => form.querySelector("input[type=hidden]").value;
  const formOf = (thing) => forms.find((form) => thingOf(form) === thing);
  const isDone = (form) => buttonsOf(form).some((b) => b.getAttribute("aria-pressed") === "true" && (b.value === form.dataset.tick || buttonsOf(form).length === 1));
  const names = { thing: forms[0].querySelector("input[type=hidden]").name, state: buttonsOf(forms[0])[0].name };
  let sending = false;

  // what is not sent yet: thing → press, the last one only; earlier versions of
  // this file kept the state alone
  const unsent = () => Object.fromEntries(Object.entries(read(`ticks ${action}`)).map(([thing, one]) => [thing, one.state ? one : { state: one }]));
  const keep = (all) => write(`ticks ${action}`, all);
  // what was sent, and when: thing → state, at
  const told = `told ${action}`;

  const show = (form, state) => {
    if (!form) return;
    const done = state === form.dataset.tick;
    const buttons = buttonsOf(form);
    for (const button of buttons) button.setAttribute("aria-pressed", String(buttons.length > 1 ? button.value === state : done));
    if (buttons.length === 1) buttons[0].value = done ? "no" : "yes";
    form.closest("li").classList.toggle("ticked", done);
  };
  const stands = (form, text) => {
    const line = form?.parentElement.querySelector("[data-stands]");
    if (!line) return;
    line.hidden = !text;
    line.textContent = text;
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

  // post sends one press and gives the state that holds, or nothing if that is
  // not known and the press has to wait.
  const post = async (thing, one) => {
    const body = { [names.thing]: thing, [names.state]: one.state };
    if (kept) Object.assign(body, { age: age(one), by: one.by ?? "", nth: one.nth ?? 0 });
    const answer = await fetch(kept ?? action, { method: "POST", keepalive: true, body: new URLSearchParams(body), signal: AbortSignal.timeout?.(patience) });
    // a refusal of this thing will not get better by asking again
    if ([400, 404, 409, 422].includes(answer.status)) return one.state;
    // signed out meanwhile: the press waits until somebody signs in
    if (!answer.ok || answer.redirected && new URL(answer.url).pathname.startsWith("/sign-in")) return undefined;
    // what is no answer of ours, such as a page of the network in between, throws
    return kept ? (await answer.json()).holds : one.state;
  };

  const send = async () => {
    if (sending) return;
    sending = true;
    try {
      for (let all = unsent(); Object.keys(all).length; all = unsent()) {
        const [thing, one] = Object.entries(all)[0];
        const holds = await post(thing, one);
        if (!holds) break;
        const now = unsent();
        if (now[thing]?.state !== one.state || now[thing].at !== one.at) continue; // pressed again meanwhile
        delete now[thing];
        keep(now);
        if (kept) write(told, { ...read(told), [thing]: { state: holds, at: Date.now() } });
        if (holds === one.state) continue;
        show(formOf(thing), holds);
        stands(formOf(thing), `A later tick stands: ${holds}.`);
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
      const one = kept ? signed(press(state)) : press(state);
      if (!keep({ ...unsent(), [thingOf(form)]: one })) return;
      event.preventDefault();
      show(form, state);
      stands(form, "");
      tell();
      send();
    });
  }

  // a copy that worker.js has kept knows nothing of what was sent since
  const copy = document.querySelector("[data-as-of]");
  if (copy) for (const [thing, { state, at }] of Object.entries(read(told))) if (at >= copy.dataset.asOf) show(formOf(thing), state);
  // presses of an earlier visit that never arrived
  for (const [thing, { state }] of Object.entries(unsent())) show(formOf(thing), state);
  tell();
  send();
  addEventListener("online", send);
  document.addEventListener("visibilitychange", () => { if (!document.hidden) send(); });
  setInterval(() => { if (Object.keys(unsent()).length) send(); }, 15000);
}
