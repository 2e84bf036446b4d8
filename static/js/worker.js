// Keeps the two sheets that are used while filming, Shots and Shoot day, so that
// a reload without a signal shows the last copy seen instead of an error. Nothing
// of other pages is kept, and app.js drops everything at the door.
"use strict";

const cacheName = "sheets"; // app.js knows it too
const mostPages = 8;
const patience = 8000; // milliseconds after which a page that is kept is shown: a bad signal may never answer
const isSheet = (path) => /^\/episodes\/\d+\/(shots|shoot-day)$/.test(path);
const isAsset = (path) => path.startsWith("/assets/");
const pathOf = (address) => new URL(address).pathname;

addEventListener("install", () => skipWaiting());

addEventListener("fetch", (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== "GET" || origin !== location.origin) return;
  if (mode === "navigate" && isSheet(pathname)) event.respondWith(sheet(event));
  if (isAsset(pathname)) event.respondWith(asset(event.request));
});

// A page that did not come through here asks to be kept.
addEventListener("message", (event) => {
  const path = pathOf(event.source.url);
  if (isSheet(path)) event.waitUntil(visit(path).catch(() => {})); // no connection, or no room
});

const visit = async (path) => {
  const cache = await caches.open(cacheName);
  const at = Date.now();
  await learn(cache, path, await fetch(path, { redirect: "manual" }), at);
};

// sheet asks the server; without an answer it gives the last copy. The cache is
// opened before: if it is dropped meanwhile, what is kept in it goes with it.
const sheet = async (event) => {
  const { pathname, search } = new URL(event.request.url);
  const cache = await caches.open(cacheName).catch(() => undefined);
  if (!cache) return fetch(event.request); // the browser refuses to keep anything
  const at = Date.now();
  const asked = fetch(event.request).then((answer) => {
    const isAway = answer.type === "opaqueredirect";
    const copy = isAway ? answer : answer.clone();
    if (isAway || search === "") event.waitUntil(learn(cache, pathname, copy, at).catch(() => {})); // no room: the copy before stays
    return answer;
  });
  event.waitUntil(asked.catch(() => {}));
  const last = await cache.match(pathname);
  if (!last) return asked;
  const late = new Promise((resolve) => { setTimeout(resolve, patience); });
  return await Promise.race([asked.catch(() => undefined), late]) ?? asOf(last);
};

// asOf is a copy that says what it is: to people, and to ticks.js.
const asOf = async (last) => {
  const text = await last.text();
  const at = askedAt(last);
  const line = `class="kept" data-as-of="${at}">No signal: this is the page as of ${clock(new Date(at))}.`;
  return new Response(text.replace('class="kept" hidden>', line), { headers: last.headers });
};

// clock is a time of today, and another day's with its date.
const clock = (at) => {
  const time = at.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  if (at.toDateString() === new Date().toDateString()) return time;
  return `${at.toLocaleDateString("en-GB", { day: "numeric", month: "short" })}, ${time}`;
};

// An asset's address says what is in it: a copy is as good as the original.
const asset = async (request) => await caches.match(request.url, { cacheName }).catch(() => undefined) ?? fetch(request);

// learn keeps a page that was asked for at an instant, or sees from the answer
// that there is none to keep.
const learn = async (cache, path, answer, at) => {
  if (answer.type === "opaqueredirect" || [401, 403].includes(answer.status)) return caches.delete(cacheName); // signed out
  if ([404, 410].includes(answer.status)) return cache.delete(path);
  if (!answer.ok) return false;
  const headers = new Headers(answer.headers);
  for (const name of ["content-encoding", "content-length"]) headers.delete(name);
  headers.set("x-asked-at", String(at));
  const text = await answer.text();
  await keepAssets(cache, text);
  await cache.put(path, new Response(text, { headers }));
  return tidy(cache);
};

const askedAt = (page) => Number(page.headers.get("x-asked-at"));

const assetsIn = (text) => new Set(text.match(/\/assets\/[0-9a-f]{16}\/[\w./-]+/g));

// keepAssets keeps what a page needs before the page: styles, scripts and, named
// in the styles, fonts. The browser mostly has them at hand.
const keepAssets = async (cache, text) => {
  await Promise.all([...assetsIn(text)].map(async (address) => {
    if (!await cache.match(address)) await cache.add(address);
    if (address.endsWith(".css")) await keepAssets(cache, await (await cache.match(address)).text());
  }));
};

// tidy drops the oldest pages, and the assets that no page needs any more.
const tidy = async (cache) => {
  const all = await cache.keys();
  const pages = await Promise.all(all.filter(({ url }) => !isAsset(pathOf(url))).map(async ({ url }) => {
    const page = await cache.match(url);
    return { url, at: askedAt(page), text: await page.text() };
  }));
  pages.sort((a, b) => b.at - a.at);
  await Promise.all(pages.slice(mostPages).map(({ url }) => cache.delete(url)));
  const needed = new Set();
  for (const { text } of pages.slice(0, mostPages)) {
    for (const address of assetsIn(text)) {
      needed.add(address);
      if (address.endsWith(".css")) for (const font of assetsIn(await (await cache.match(address)).text())) needed.add(font);
    }
  }
  const idle = all.filter(({ url }) => isAsset(pathOf(url)) && !needed.has(pathOf(url)));
  await Promise.all(idle.map(({ url }) => cache.delete(url)));
};
