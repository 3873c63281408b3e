// What is typed and not yet kept stays in this browser, each field of each form for itself.
import {said as inWords} from "./words.js";
const DRAFTS = "shimwright.draft:";
const UNTYPED = ["hidden", "radio", "checkbox", "file"];

/** What tells a form from the others of its page: where it posts and what it is about. */
export function identity(form) {
    const about = Array.from(form.elements)
        .filter(e => e.type === "hidden" && e.name && e.name !== "entry")
        .map(e => e.name + "=" + e.value);
    return [form.getAttribute("action"), ...about].join("|");
}

function key(form, field) {
    return DRAFTS + location.pathname + ":" + identity(form) + ":" + field.name;
}

export function typedFields(form) {
    return Array.from(form.elements).filter(e => e.name
        && (e.tagName === "TEXTAREA" || (e.tagName === "INPUT" && !UNTYPED.includes(e.type))));
}

function draft(form, field) {
    try {
        return localStorage.getItem(key(form, field));
    } catch (forbidden) {
        return null;
    }
}

function keep(form, field) {
    try {
        if (field.value) localStorage.setItem(key(form, field), field.value);
        else localStorage.removeItem(key(form, field));
    } catch (full) {
        // nothing is promised where the browser keeps nothing
    }
}

/** Puts what was typed before back into its fields, says so, and lets the next key replace it instead of adding to it. */
export function keepDrafts(form) {
    let back = false;
    for (const field of typedFields(form)) {
        const kept = draft(form, field);
        if (kept && !field.value) {
            back = true;
            field.value = kept;
            field.closest("details")?.setAttribute("open", "");
            field.addEventListener("focus", () => field.select(), {once: true});
            if (document.activeElement === field) field.select();
        }
        field.addEventListener("input", () => keep(form, field));
    }
    if (back) form.prepend(restored(form));
}

function restored(form) {
    const said = document.createElement("p");
    said.className = "restored";
    said.setAttribute("role", "status");
    said.textContent = inWords("What you had typed here is back.") + " ";
    const afresh = document.createElement("button");
    afresh.type = "button";
    afresh.className = "quiet";
    afresh.textContent = inWords("Start afresh");
    afresh.addEventListener("click", () => {
        dropDrafts(form);
        for (const field of typedFields(form)) field.value = field.defaultValue;
        said.remove();
        typedFields(form)[0]?.focus();
    });
    said.append(afresh);
    return said;
}

export function dropDrafts(form) {
    for (const field of typedFields(form)) {
        try {
            localStorage.removeItem(key(form, field));
        } catch (forbidden) {
            return;
        }
    }
}

/** Puts what was refused back into its form, also where the page that came did not. */
export function refill(form, fields) {
    for (const element of form.elements) {
        const values = fields.filter(([name]) => name === element.name).map(([, value]) => value);
        if (!element.name || element.type === "hidden" || element.type === "file" || !values.length) continue;
        if (element.type === "radio" || element.type === "checkbox") element.checked ||= values.includes(element.value);
        else if (element.tagName === "SELECT" || !element.value) element.value = values[0];
        else continue;
        element.closest("details")?.setAttribute("open", "");
    }
}
