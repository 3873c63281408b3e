// Entries on their way: each is written down under its own id before anything else, with its pictures, and they go one after
// the other. The server keeps an id once, so sending again does no harm; only its answer takes an entry off the list. One
// that is refused stays, and what was typed after it on the same job waits behind it.
import {said as inWords} from "./words.js";
const NAME = "shimwright.unsent";
const STORE = "entries";
const PATIENCE_MS = 30000;
/** What was sent sooner than this did not wait. */
const AT_ONCE_S = 15;

/** What is being written of each entry, and entries that are taken off the list. */
const writes = new Map();
const gone = new Set();
let list = [];
let open = null;
let running = null;
let unanswered = false;
let changed = () => {};
const others = "BroadcastChannel" in globalThis ? new BroadcastChannel(NAME) : null;

/** What is done whenever the list has changed, here or in another window. */
export const onChange = act => { changed = act; };

export const waiting = () => list.filter(entry => !entry.faults);
export const refused = () => list.filter(entry => entry.faults);
export const get = id => list.find(entry => entry.id === id);
export const has = id => get(id) !== undefined;

/** True after the server has not answered. */
export const silent = () => unanswered;

/** True for an entry that only this page holds, since the browser keeps nothing. */
export const loose = entry => entry.n === undefined;

const group = entry => /^\/job\/[^/]+/.exec(entry.action)?.[0] ?? "";
const stuck = entry => list.slice(0, list.indexOf(entry)).find(e => e.faults && group(e) === group(entry));

/** True where an entry waits for another that was refused. */
export const behind = id => has(id) && stuck(get(id)) !== undefined;

const next = () => list.find(entry => !entry.faults && !stuck(entry));

/** An id for an entry; getRandomValues also works where the page is not served over TLS. */
export function newId() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return "c-" + Array.from(bytes, b => b.toString(16).padStart(2, "0")).join("");
}

function database() {
    open ??= new Promise((yes, no) => {
        const asked = indexedDB.open(NAME, 1);
        asked.onupgradeneeded = () => asked.result.createObjectStore(STORE, {keyPath: "n", autoIncrement: true});
        asked.onsuccess = () => {
            asked.result.onclose = () => { open = null; };
            yes(asked.result);
        };
        asked.onerror = () => no(asked.error);
    });
    return open;
}

/** Does something with the list on the disk; what is answered is there also when the power fails. */
async function disk(mode, act) {
    const transaction = (await database()).transaction(STORE, mode, {durability: "strict"});
    const asked = act(transaction.objectStore(STORE));
    await new Promise((yes, no) => {
        transaction.oncomplete = yes;
        transaction.onabort = () => no(transaction.error);
    });
    return asked.result;
}

function tell() {
    changed();
    others?.postMessage("");
}

/** Reads what lies on the disk, whichever window wrote it. */
export async function load() {
    try {
        const kept = (await disk("readonly", store => store.getAll())).filter(entry => !gone.has(entry.id));
        const mine = new Map(list.map(entry => [entry.id, entry]));
        const ids = new Set(kept.map(entry => entry.id));
        // what this page is writing is newer than what lies there
        list = [...kept.map(entry => writes.has(entry.id) && mine.has(entry.id) ? mine.get(entry.id)
            : Object.assign(mine.get(entry.id) ?? {}, {faults: undefined}, entry)),
            ...list.filter(entry => loose(entry) && !ids.has(entry.id))];
    } catch (nothing) {
        // a browser that keeps nothing: this page remembers
    }
    changed();
}

const ready = load();
others?.addEventListener("message", load);

/** Writes an entry down, one state of it after the other. */
function write(entry) {
    const after = (writes.get(entry.id) ?? Promise.resolve()).then(async () => {
        const {n, ...bare} = entry;
        try {
            entry.n = await disk("readwrite", store => store.put(n === undefined ? bare : entry));
        } catch (full) {
            // it stays in this page, which says so
        }
        if (writes.get(entry.id) === after) writes.delete(entry.id);
        tell();
    });
    writes.set(entry.id, after);
    return after;
}

/** Writes an entry down at the end of the list; ready once it lies on the disk. */
export function add(entry) {
    const put = {...entry, at: Date.now()};
    list = [...list, put];
    return write(put);
}

/** Puts what was typed now in the place of what was refused. */
export function replace(id, fields, words) {
    const entry = get(id);
    Object.assign(entry, {fields, words, faults: undefined});
    return write(entry);
}

/** Takes an entry back; it is not sent. */
export async function drop(id) {
    const entry = get(id);
    list = list.filter(other => other.id !== id);
    gone.add(id);
    changed();
    await writes.get(id);
    writes.delete(id);
    if (entry && !loose(entry)) await disk("readwrite", store => store.delete(entry.n)).catch(() => {});
    tell();
}

/** The sentences of an answer that refuses. */
function sentences(answer) {
    const said = new DOMParser().parseFromString(answer.html, "text/html");
    const faults = Array.from(said.querySelectorAll("main > .faults li"), li => li.textContent.trim());
    return faults.length ? faults : [inWords("the bench server could not take it ({0})", String(answer.status))];
}

/** What is sent: with a picture as a form with parts, and with how long it waited, so that its clocks count from then. */
function body(entry) {
    const waited = Math.round((Date.now() - entry.at) / 1000);
    const fields = waited > AT_ONCE_S ? [...entry.fields, ["waited", String(waited)]] : entry.fields;
    if (!fields.some(([, value]) => value instanceof File)) return new URLSearchParams(fields);
    const form = new FormData();
    fields.forEach(([name, value]) => form.append(name, value));
    return form;
}

/** Sends one; throws where the server was not reached. */
async function post(entry) {
    const stop = new AbortController();
    const late = setTimeout(() => stop.abort(), PATIENCE_MS);
    try {
        const answer = await fetch(entry.action, {method: "POST", body: body(entry), redirect: "follow", signal: stop.signal});
        if (answer.status >= 502) throw new Error("no server");
        return {entry, ok: answer.ok, status: answer.status, url: answer.url, html: await answer.text()};
    } finally {
        clearTimeout(late);
    }
}

/** Sends one that was refused again; undefined where the server is not reached. */
export async function again(id) {
    try {
        const answer = await post(get(id));
        if (answer.ok) await drop(id);
        return answer;
    } catch (unreached) {
        return undefined;
    }
}

/** Sends what waits, in order, until nothing waits or the server is not reached; answers what was answered. */
export function sendAll() {
    running ??= run().finally(() => { running = null; });
    return running;
}

async function run() {
    const answers = [];
    await ready;
    for (let entry = next(); entry; entry = next()) {
        let answer;
        try {
            answer = await post(entry);
        } catch (unreached) {
            unanswered = true;
            // what waits is not thrown away where the browser wants room
            navigator.storage?.persist?.();
            return {reached: false, answers};
        }
        answers.push(answer);
        if (answer.ok) {
            await drop(entry.id);
        } else {
            entry.faults = sentences(answer);
            await write(entry);
        }
    }
    unanswered = false;
    return {reached: true, answers};
}
