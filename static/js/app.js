// Conveniences only: every page works without this file.
"use strict";

// copy: a button that takes a text to the clipboard and says so.
for (const button of document.querySelectorAll("[data-copy]")) {
  const label = button.textContent;
  button.hidden = false;
  button.addEventListener("click", async () => {
    const source = document.getElementById(button.dataset.copy);
    try {
      await navigator.clipboard.writeText(source.textContent);
    } catch {
      // no clipboard (plain http): select it, so that the keyboard can copy
      getSelection().selectAllChildren(source);
      button.textContent = "Selected: copy it with the keyboard";
      return;
    }
    button.textContent = button.dataset.done;
    const status = button.parentElement.querySelector("[data-copied]");
    if (status) status.textContent = button.dataset.done;
    setTimeout(() => {
      button.textContent = label;
      if (status) status.textContent = "";
    }, 2500);
  });
}

// print: only a script can offer it.
for (const button of document.querySelectorAll("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => print());
}

// a refused form: go to the list of what is to be changed.
document.querySelector("[data-focus]")?.focus();

// count: characters typed against a limit, as people count them.
for (const count of document.querySelectorAll("[data-count]")) {
  const field = document.getElementById(count.dataset.count);
  const limit = Number(count.dataset.limit);
  const show = () => {
    const length = [...field.value].length;
    count.textContent = `${length} of ${limit} characters`;
    count.classList.toggle("over", length > limit);
  };
  field.addEventListener("input", show);
  show();
}

// guard: ask before leaving a form with something typed and not saved.
for (const form of document.querySelectorAll("form[data-guard]")) {
  const typed = () => new URLSearchParams(new FormData(form)).toString();
  const before = form.querySelector("[data-focus]") ? "" : typed();
  let leaving = false;
  form.addEventListener("submit", () => { leaving = true; });
  addEventListener("pageshow", () => { leaving = false; });
  addEventListener("beforeunload", (event) => {
    if (!leaving && navigator.userActivation?.hasBeenActive !== false && typed() !== before) event.preventDefault();
  });
}

// autosize where the browser's own field-sizing is missing.
if (!CSS.supports("field-sizing", "content")) {
  for (const area of document.querySelectorAll("textarea")) {
    const fit = () => {
      area.style.height = "auto";
      area.style.height = `${area.scrollHeight + 2}px`;
    };
    area.addEventListener("input", fit);
    fit();
  }
}

// read: what is understood of a recipe, again after a pause in typing.
const recipe = document.querySelector("form[data-reads]");
if (recipe?.dataset.reads) {
  let waiting, asked = 0;
  const read = async () => {
    const mine = ++asked;
    try {
      const answer = await fetch(recipe.dataset.reads, { method: "POST", body: new URLSearchParams(new FormData(recipe)) });
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const fresh = page.getElementById("understood");
      const shown = document.getElementById("understood");
      const busy = shown.querySelector("details[open]"); // a correction half typed stays
      if (mine === asked && fresh && !busy) shown.replaceChildren(...fresh.childNodes);
    } catch {
      // no connection: the button reads it later
    }
  };
  recipe.elements.namedItem("text").addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(read, 700);
  });
}

// put right: Enter in a correction means its own button, not the form's first.
document.getElementById("understood")?.addEventListener("keydown", (event) => {
  if (event.key !== "Enter" || event.target.tagName !== "INPUT") return;
  event.preventDefault();
  event.target.closest(".righting").querySelector("button").click();
});

// door: the pages that worker.js keeps are for whoever is signed in. They go when
// somebody signs out, and at the latest where somebody signs in.
const dropKept = () => {
  globalThis.caches?.delete("sheets").catch(() => {});
  try {
    for (const key of Object.keys(localStorage)) if (key.startsWith("told ")) localStorage.removeItem(key);
  } catch {
    // storage refused: there is nothing in it
  }
};
if (document.querySelector("form[action='/sign-in'], form[action='/setup']")) dropKept();
document.querySelector("form[action='/sign-out']")?.addEventListener("submit", dropKept);
