// Entries on their way: each is written down before it is sent, under its own id, and they go one after the other.
// The server keeps an id once, so sending again does no harm; only its answer takes an entry off the list.
import {read, write} from "./store.js";

const WAITING = "shimwright.unsent";
const REFUSED = "shimwright.refused";
const PATIENCE_MS = 30000;

/** Entries with a picture, which only this page can hold. */
const withFiles = new Map();
let running = null;
let unanswered = false;

export const waiting = () => read(WAITING, []);
export const refused = () => read(REFUSED, []);
export const has = id => waiting().some(entry => entry.id === id);

/** True after the server has not answered. */
export const silent = () => unanswered;

/** An id for an entry; getRandomValues also works where the page is not served over TLS. */
export function newId() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return "c-" + Array.from(bytes, b => b.toString(16).padStart(2, "0")).join("");
}

/** Writes an entry down at the end of the list. */
export function add(id, action, data, words) {
    const file = Array.from(data.values()).some(v => v instanceof File);
    if (file) withFiles.set(id, data);
    const fields = Array.from(data.entries()).filter(([, v]) => typeof v === "string");
    write(WAITING, [...waiting(), {id, action, fields, words, file}]);
}

function remove(id) {
    withFiles.delete(id);
    const left = waiting().filter(entry => entry.id !== id);
    write(WAITING, left.length ? left : null);
}

/** Remembers what was refused while nobody looked, with the sentences of the answer, until it is read and forgotten. */
export function keepRefused(entry, answer) {
    const said = new DOMParser().parseFromString(answer.html, "text/html");
    const faults = Array.from(said.querySelectorAll("main > .faults li"), li => li.textContent.trim());
    write(REFUSED, [...refused(), {id: entry.id, words: entry.words,
        faults: faults.length ? faults : ["the bench server could not take it (" + answer.status + ")"]}]);
}

export function forget(id) {
    const left = refused().filter(entry => entry.id !== id);
    write(REFUSED, left.length ? left : null);
}

/** Sends one; throws where the server was not reached. */
async function post(entry) {
    const body = withFiles.get(entry.id) ?? new URLSearchParams(entry.fields);
    const stop = new AbortController();
    const late = setTimeout(() => stop.abort(), PATIENCE_MS);
    try {
        const answer = await fetch(entry.action, {method: "POST", body, redirect: "follow", signal: stop.signal});
        if (answer.status >= 502) throw new Error("no server");
        return {entry, ok: answer.ok, status: answer.status, url: answer.url, html: await answer.text()};
    } finally {
        clearTimeout(late);
    }
}

/** Sends what waits, in order, until nothing waits or the server is not reached; answers what was answered. */
export function sendAll() {
    running ??= run().finally(() => { running = null; });
    return running;
}

async function run() {
    const answers = [];
    for (let entry = waiting()[0]; entry; entry = waiting()[0]) {
        if (entry.file && !withFiles.has(entry.id)) {
            keepRefused(entry, {html: "<main><p class=faults><li>The page was closed before its picture was sent. Take it again.</li></main>"});
            remove(entry.id);
            continue;
        }
        try {
            answers.push(await post(entry));
        } catch (unreached) {
            unanswered = true;
            return {reached: false, answers};
        }
        remove(entry.id);
    }
    unanswered = false;
    return {reached: true, answers};
}
