// The job in hand in the memory of this screen: the worker keeps each page that is seen, and while nothing else is to be done
// the pages that come next are fetched for it. Only where the browser allows a worker: on this machine, or by TLS it trusts.
import {said} from "./words.js";
const WORKER = "/static/worker.js";
const PAGES = "shimwright.pages";
const IDLE_MS = 2500;
const BETWEEN_MS = 400;
const AHEAD = 4;
/** What is not next is fetched again after so long, if its job went on. */
const STALE_MS = 15 * 60 * 1000;

let timer = 0;
let worker = null;

const job = () => /^\/job\/[^/]+/.exec(location.pathname)?.[0];

/** Where this page is from the worker's memory: since when; 0 for one that the server made. */
export const since = () => Number(document.querySelector(".memory[data-kept-at]")?.dataset.keptAt ?? 0);

/** Hands the worker a page that came as the answer to an entry, which it does not see. */
export function keep(html, url) {
    navigator.serviceWorker?.controller?.postMessage({html, url: new URL(url, location.href).href});
}

async function begin() {
    worker ??= navigator.serviceWorker.register(WORKER, {scope: "/"});
    await worker;
    const ready = await navigator.serviceWorker.ready;
    const files = performance.getEntriesByType("resource").map(e => e.name)
        .filter(name => new URL(name).origin === location.origin && /^\/static\//.test(new URL(name).pathname));
    ready.active?.postMessage({files: Array.from(new Set(files))});
}

function links(root, css) {
    return Array.from(root.querySelectorAll(css), e => new URL(e.getAttribute("href"), location.href))
        .filter(to => to.pathname.startsWith(job() + "/"))
        .map(to => to.pathname + to.search);
}

/** Has one page fetched through the worker, unless it holds it as it is or as it was a short while ago; answers the page. */
async function fetched(address, near) {
    const pages = await caches.open(PAGES);
    const known = await pages.match(new URL(address, location.href).href);
    const same = known?.headers.get("Mark") === document.body.dataset.mark;
    const young = known && !near && Date.now() - Number(known.headers.get("Kept-At")) < STALE_MS;
    if (same || young) return known.text();
    await new Promise(go => setTimeout(go, BETWEEN_MS));
    const answer = await fetch(address, {headers: {Accept: "text/html"}, priority: "low"});
    return answer.ok && !answer.redirected ? answer.text() : "";
}

/** Fetches what comes next first, then the rest of the job; stops where the page changes. */
async function walk() {
    const of = job();
    const mark = document.body.dataset.mark;
    const here = () => job() === of && document.body.dataset.mark === mark && !document.hidden && !since();
    const read = async (address, near) => here() ? new DOMParser().parseFromString(await fetched(address, near), "text/html") : null;
    const build = await read(of + "/build", true);
    if (!build) return;
    const next = links(build, ".ahead a").slice(0, AHEAD);
    const near = [...next, ...links(build, "main a[href*='/clearance/']")];
    const steps = [];
    for (const address of new Set(near)) {
        const step = await read(address, true);
        if (step) steps.push(...links(step, "main a[href*='/clearance/']"));
    }
    for (const address of new Set(steps)) await read(address, true);
    for (const page of ["/strip", "/inspect", "/complaint", "/orders"]) await read(of + page, false);
    const clearances = await read(of + "/clearances", false);
    const plan = await read(of + "/plan", false);
    const rest = [...(clearances ? links(clearances, "main a[href*='/clearance/']") : []),
        ...(plan ? links(plan, "main a[href*='/build?step=']") : [])];
    for (const address of new Set(rest)) await read(address, false);
}

/** Keeps the job of this page, once nothing else is to be done. */
export function memory() {
    clearTimeout(timer);
    if (!("serviceWorker" in navigator) || !document.querySelector("header.injob") || since()) return;
    timer = setTimeout(() => begin().then(walk).catch(() => {
        // where the browser gives no worker, the pages are as they were
    }), IDLE_MS);
}

function ago(at) {
    const minutes = Math.round((Date.now() - at) / 60000);
    return minutes < 1 ? said("less than a minute ago") : minutes < 120 ? said("{0} min ago", minutes) : said("{0} h ago", Math.round(minutes / 60));
}

setInterval(() => document.querySelectorAll(".memory [data-ago]").forEach(e => { e.textContent = ago(since()); }), 30000);
