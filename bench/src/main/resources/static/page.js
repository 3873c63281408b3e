// Pages come into the one that stands: keys, unsent entries and clocks live on, and no key falls between two pages.
import * as keys from "./keys.js";
import {say} from "./notice.js";
import {said} from "./words.js";

let started = () => {};
let shown = address(location);

function address(url) {
    return url.pathname + url.search;
}

/** What is to be done with every page, the first one included. */
export function onEach(start) {
    started = start;
    start();
}

/** Puts a page in place of this one; false for what is no page of ours. */
export function show(html, url, {push = true, top = true} = {}) {
    const next = new DOMParser().parseFromString(html, "text/html");
    if (!next.querySelector("main")) return false;
    // a document that is only read has no script, so what is meant for pages without one would stand in it
    next.querySelectorAll("noscript").forEach(e => e.remove());
    const to = new URL(url, location.href);
    if (push && to.href !== location.href) history.pushState(null, "", to);
    shown = address(location);
    document.title = next.title;
    // how the screen is held stands at the root, which stays
    document.documentElement.className = next.documentElement.className;
    document.documentElement.dataset.pedal = next.documentElement.dataset.pedal ?? "";
    document.body.replaceWith(document.adoptNode(next.body));
    if (top) scrollTo(0, 0);
    started();
    const first = document.querySelector("[autofocus]");
    if (first) first.focus({preventScroll: !top});
    if (to.hash) document.getElementById(to.hash.slice(1))?.scrollIntoView();
    return true;
}

/** Goes to an address of ours; one that answers with no page is left to the browser. */
export async function go(url, how = {}) {
    keys.hold();
    let came = false;
    try {
        const answer = await fetch(url, {headers: {Accept: "text/html"}});
        if (answer.status >= 502) throw new Error("no server");
        const page = (answer.headers.get("Content-Type") ?? "").startsWith("text/html");
        came = page && show(await answer.text(), answer.url, how);
        if (!came) location.assign(url);
    } catch (unreached) {
        say(said("The bench server does not answer, so this page stays. Try again."));
    } finally {
        keys.release(came);
    }
}

/** Puts parts of a page, by id, in place of those that stand here; all else stays as it is, typed or open. */
export async function parts(url, ids) {
    const page = shown;
    try {
        const answer = await fetch(url, {headers: {Accept: "text/html"}});
        const next = new DOMParser().parseFromString(await answer.text(), "text/html");
        if (!answer.ok || page !== shown) return;
        for (const id of ids) {
            const here = document.getElementById(id);
            const there = next.getElementById(id);
            if (here && there) here.replaceWith(document.adoptNode(there));
        }
    } catch (unreached) {
        // it is looked at again
    }
}

/** True for an address of a page of ours, not of a picture, a paper or a place on this page. */
function inside(to) {
    const elsewhere = to.origin !== location.origin || (to.hash && address(to) === address(location));
    return !elsewhere && !/^\/(api|picture|static)\/|\.\w+$/.test(to.pathname);
}

addEventListener("click", event => {
    const link = event.target.closest?.("a[href]");
    const plain = event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey && !event.altKey;
    if (!link || !plain || event.defaultPrevented || link.hasAttribute("target") || link.hasAttribute("download")) return;
    const to = new URL(link.getAttribute("href"), location.href);
    if (!inside(to)) return;
    event.preventDefault();
    go(to.href);
});

addEventListener("submit", event => {
    const form = event.target;
    if (event.defaultPrevented || form.method !== "get" || form.target) return;
    event.preventDefault();
    const to = new URL(form.action);
    to.search = new URLSearchParams(new FormData(form, event.submitter));
    go(to.href);
});

addEventListener("popstate", () => {
    if (address(location) !== shown) go(location.href, {push: false, top: false});
});
