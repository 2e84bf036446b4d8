// The cut beside its captions: a file the creator picks plays in the browser
// and is sent nowhere; a press on a timecode jumps there.
"use strict";

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
