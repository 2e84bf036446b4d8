// The cut beside its captions: a file the creator picks plays in the browser
// and is sent nowhere; a press on a timecode jumps there.
"use strict";

// captions: a file fills the field, whatever it is encoded in.
const field = document.getElementById("cut-captions");
if (field) {
  const label = document.createElement("label");
  label.className = "hint";
  label.textContent = "Or take them from a file ";
  const file = document.createElement("input");
  file.type = "file";
  file.accept = ".vtt,.srt,.txt,text/vtt";
  label.append(file);
  field.after(label);
  file.addEventListener("change", async () => {
    if (!file.files.length) return;
    const bytes = new Uint8Array(await file.files[0].arrayBuffer());
    const mark = bytes[0] * 256 + bytes[1];
    const encoding = mark === 0xfffe ? "utf-16le" : mark === 0xfeff ? "utf-16be" : "utf-8";
    field.value = new TextDecoder(encoding).decode(bytes);
    field.dispatchEvent(new Event("input"));
  });
}

const watch = document.querySelector("[data-watch]");
if (watch) {
  const video = watch.querySelector("video");
  const file = watch.querySelector("input[type=file]");
  watch.hidden = false;
  file.addEventListener("change", () => {
    if (video.src) URL.revokeObjectURL(video.src);
    watch.classList.toggle("playing", file.files.length > 0);
    video.hidden = !file.files.length;
    if (!file.files.length) return video.removeAttribute("src");
    video.src = URL.createObjectURL(file.files[0]);
    for (const row of document.querySelectorAll("[data-at]")) offer(row);
  });

  // offer makes a row's timecode a button.
  const offer = (row) => {
    const gutter = row.querySelector(".g");
    if (!row.dataset.at || gutter.querySelector("button")) return;
    const button = document.createElement("button");
    button.type = "button";
    button.className = "text";
    button.textContent = gutter.textContent.trim();
    button.setAttribute("aria-label", `Play from ${button.textContent}`);
    button.addEventListener("click", () => {
      video.currentTime = Number(row.dataset.at);
      video.play();
    });
    gutter.replaceChildren(button);
  };
}

// A link to a caption opens what it is folded in, and so does the address.
const reveal = () => {
  const fold = document.getElementById(location.hash.slice(1))?.closest("details");
  if (!fold || fold.open) return;
  fold.open = true;
  document.getElementById(location.hash.slice(1)).scrollIntoView();
};
addEventListener("hashchange", reveal);
reveal();
