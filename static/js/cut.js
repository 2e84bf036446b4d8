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
    if (!file.files.length) return;
    video.src = URL.createObjectURL(file.files[0]);
    video.hidden = false;
    for (const cue of document.querySelectorAll("[data-at]")) offer(cue);
  });

  // offer makes a cue's timecode a button.
  const offer = (cue) => {
    const gutter = cue.querySelector(".g");
    if (gutter.querySelector("button")) return;
    const button = document.createElement("button");
    button.type = "button";
    button.className = "text";
    button.textContent = gutter.textContent.trim();
    button.setAttribute("aria-label", `Play from ${button.textContent}`);
    button.addEventListener("click", () => {
      video.currentTime = Number(cue.dataset.at);
      video.play();
    });
    gutter.replaceChildren(button);
  };
}
