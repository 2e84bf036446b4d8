// The sheets that are used while filming are kept by worker.js for a reload
// without a signal. Browsers allow that to pages over https and on this machine:
// elsewhere this file does nothing.
"use strict";

const worker = navigator.serviceWorker;
if (worker) {
  const address = document.querySelector("[data-worker]").dataset.worker;
  worker.register(address, { scope: "/episodes/" }).catch(() => {
    // refused, or no connection: the page works without
  });
  // a page that came past the worker, such as the first, is still to be kept
  if (!worker.controller) worker.ready.then((there) => there.active.postMessage("keep"));
}
