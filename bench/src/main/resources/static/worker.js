// The memory of this screen: pages of the job in hand, their pictures and the files they need, for when the bench server does
// not answer. While it answers, every page is its own; nothing private stays once the server says that this device is out.
"use strict";

const PAGES = "shimwright.pages";
const FILES = "shimwright.files";
/** So long a page is waited for that is in memory; shorter while the server was silent the last time. */
const PATIENCE_MS = 10000;
const IMPATIENCE_MS = 1500;
const JOBS = 2;
const MOST_PAGES = 240;
const MOST_FILES = 400;
const OLDEST_MS = 14 * 24 * 3600 * 1000;

const KEPT = /^\/job\/([^/]+)\/(build|clearances|clearance\/[^/]+|strip|inspect|complaint|orders|together|plan|proof)$/;
const FILE = /^\/static\/|^\/picture\/[0-9a-f]{64}\/small$|^\/job\/[^/]+\/part\//;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", event => event.waitUntil(self.clients.claim()));

/** The address under which a page is kept: what was said of the last entry, or the field it goes to, is no part of it. */
function place(url) {
    const to = new URL(url);
    to.hash = "";
    to.searchParams.delete("said");
    to.searchParams.delete("limit");
    return to;
}

const kept = to => KEPT.test(to.pathname) && Array.from(to.searchParams.keys()).every(name => name === "step");

let keeping = Promise.resolve();

/** Lays a page down, one after the other. */
function keep(to, html) {
    keeping = keeping.then(() => lay(to, html)).catch(() => {
        // a full disk keeps no more
    });
    return keeping;
}

/** Lays a page down with its mark and the time. */
async function lay(to, html) {
    const mark = /<body data-mark="([^"]*)"/.exec(html);
    if (!mark) return;
    // the word on the last entry was for then
    const text = html.replace(/<p class="kept" role="status">[^]*?<\/p>/, "");
    const headers = {"Content-Type": "text/html; charset=utf-8", "Kept-At": String(Date.now()), "Mark": mark[1]};
    const pages = await caches.open(PAGES);
    // what is put anew comes last, so that the first are the oldest
    await pages.delete(to.href);
    await pages.put(to.href, new Response(text, {headers}));
    await bound(pages);
}

/** Keeps the memory small: the jobs that were open last, and so many pages. */
async function bound(pages) {
    const asked = (await pages.keys()).reverse();
    const jobs = new Set();
    let number = 0;
    for (const request of asked) {
        const job = KEPT.exec(new URL(request.url).pathname)?.[1];
        if (job && jobs.size < JOBS) jobs.add(job);
        if (!jobs.has(job) || ++number > MOST_PAGES) await pages.delete(request);
    }
}

async function forget() {
    await Promise.all([caches.delete(PAGES), caches.delete(FILES)]);
}

let silent = false;

/** The server's answer; throws where none comes, or not in time. */
async function ask(request, patient) {
    let late;
    let answer;
    try {
        answer = await Promise.race([fetch(request), new Promise((_, no) => {
            late = patient ? 0 : setTimeout(() => no(new Error("no answer")), silent ? IMPATIENCE_MS : PATIENCE_MS);
        })]);
        silent = false;
    } catch (unreached) {
        silent = true;
        throw unreached;
    } finally {
        clearTimeout(late);
    }
    if (answer.headers.get("Shop-Memory") === "forget") await forget();
    return answer;
}

function ago(at) {
    const minutes = Math.round((Date.now() - at) / 60000);
    return minutes < 1 ? "less than a minute ago" : minutes < 120 ? minutes + " min ago"
        : minutes < 2880 ? Math.round(minutes / 60) + " h ago" : Math.round(minutes / 1440) + " days ago";
}

/** A kept page that says so. */
async function marked(answer) {
    const at = Number(answer.headers.get("Kept-At"));
    const said = '<p class="memory" role="status" data-kept-at="' + at + '"><b>From the memory of this screen</b>, as it was '
        + '<span data-ago>' + ago(at) + '</span>. The bench server does not answer.</p>';
    const html = (await answer.text()).replace(/<main>/, "<main>\n" + said);
    return new Response(html, {headers: {"Content-Type": "text/html; charset=utf-8", "Kept-At": String(at)}});
}

const escaped = text => text.replace(/[&<>"]/g, c => "&#" + c.charCodeAt(0) + ";");

/** What is said where a page is not kept, with those that are. */
async function missing() {
    const pages = await caches.open(PAGES);
    const links = [];
    for (const request of (await pages.keys()).reverse()) {
        const title = /<title>([^<]*?) ·/.exec(await (await pages.match(request)).text())?.[1] ?? "";
        const to = new URL(request.url);
        const step = to.searchParams.get("step");
        links.push('<li><a href="' + escaped(to.pathname + to.search) + '">' + title + (step ? " " + escaped(step) : "") + "</a></li>");
    }
    const html = '<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Not in memory · Shimwright</title>'
        + '<meta name="viewport" content="width=device-width, initial-scale=1"><link rel="stylesheet" href="/static/bench.css">'
        + '<link rel="stylesheet" href="/static/held.css"><script src="/static/bench.js" type="module"></script></head><body><main>'
        + '<div id="not-kept" class="notkept" role="alert" hidden></div><h1>The bench server does not answer</h1>'
        + "<p>This page is not in the memory of this screen. " + (links.length ? "These are:" : "No job is.") + "</p>"
        + '<ul class="memories">' + links.join("") + "</ul></main></body></html>";
    return new Response(html, {status: 504, headers: {"Content-Type": "text/html; charset=utf-8"}});
}

async function page(event, to) {
    const pages = await caches.open(PAGES);
    const known = kept(to) ? await pages.match(to.href) : undefined;
    const fresh = known && Date.now() - Number(known.headers.get("Kept-At")) < OLDEST_MS ? known : undefined;
    try {
        const answer = await ask(event.request, !fresh);
        const html = (answer.headers.get("Content-Type") ?? "").startsWith("text/html");
        if (answer.ok && html && !answer.redirected && kept(to)) {
            event.waitUntil(answer.clone().text().then(text => keep(to, text)));
        }
        return answer;
    } catch (unreached) {
        return fresh ? marked(fresh) : missing();
    }
}

async function file(event) {
    const files = await caches.open(FILES);
    try {
        const answer = await ask(event.request, true);
        if (answer.ok && answer.type === "basic" && !answer.redirected) {
            const copy = answer.clone();
            event.waitUntil(store(files, event.request.url, copy));
        }
        return answer;
    } catch (unreached) {
        const known = await files.match(event.request.url);
        if (known) return known;
        throw unreached;
    }
}

async function store(files, url, answer) {
    await files.put(url, answer);
    const asked = await files.keys();
    const pictures = asked.filter(request => !new URL(request.url).pathname.startsWith("/static/"));
    for (const request of pictures.slice(0, Math.max(0, pictures.length - MOST_FILES))) await files.delete(request);
}

self.addEventListener("fetch", event => {
    const to = place(event.request.url);
    if (event.request.method !== "GET" || to.origin !== self.location.origin) return;
    const html = event.request.mode === "navigate" || event.request.headers.get("Accept") === "text/html";
    if (FILE.test(to.pathname)) event.respondWith(file(event));
    else if (html) event.respondWith(page(event, to));
});

// A page that came as the answer to an entry, and the files that a page was made of before this worker was there.
self.addEventListener("message", event => {
    const {html, url, files} = event.data;
    if (html && kept(place(url))) event.waitUntil(keep(place(url), html));
    if (files) event.waitUntil(caches.open(FILES).then(all => all.addAll(files)).catch(() => {}));
});
