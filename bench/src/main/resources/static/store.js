// What the browser remembers for us, as JSON. Where it may not (a private window, a full disk), this page remembers.
const page = new Map();

export function read(key, otherwise) {
    if (page.has(key)) return page.get(key);
    try {
        return JSON.parse(localStorage.getItem(key)) ?? otherwise;
    } catch (unreadable) {
        return otherwise;
    }
}

/** Keeps a value; null forgets it. */
export function write(key, value) {
    page.delete(key);
    try {
        if (value === null) localStorage.removeItem(key);
        else localStorage.setItem(key, JSON.stringify(value));
    } catch (full) {
        page.set(key, value ?? undefined);
    }
}
