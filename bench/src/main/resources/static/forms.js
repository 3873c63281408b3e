// Forms: an entry is written down, sent and shown; Enter goes on to the next empty field, then sends.
import * as drafts from "./drafts.js";
import * as keys from "./keys.js";
import * as notice from "./notice.js";
import * as page from "./page.js";
import * as unsent from "./unsent.js";

const AGAIN_MS = 3000;
let retry = 0;

/** An entry in words, for the list of what waits: what was typed, else what was pressed. */
function words(form, data, submitter) {
    const hidden = Array.from(form.elements).filter(e => e.type === "hidden").map(e => e.name);
    const typed = Array.from(data.entries())
        .filter(([name, value]) => value && !hidden.includes(name))
        .map(([, value]) => value instanceof File ? "picture " + value.name : value);
    const pressed = submitter?.textContent.trim() ?? "";
    const about = ["step", "limit"].map(name => data.get(name)).find(Boolean) ?? "";
    return [about, typed.join(", ") || pressed].filter(Boolean).join(": ");
}

async function send(form, submitter) {
    const data = new FormData(form, submitter);
    if (submitter?.name && !data.has(submitter.name)) data.append(submitter.name, submitter.value);
    const id = data.get("entry") || unsent.newId();
    data.set("entry", id);
    const typing = drafts.typedFields(form).some(e => e.value);
    // a form may have a second button that sends it elsewhere
    const action = submitter?.getAttribute("formaction") ?? form.getAttribute("action");
    unsent.add(id, action, data, words(form, data, submitter));
    const buttons = Array.from(form.querySelectorAll("button"));
    buttons.forEach(b => { b.disabled = true; });
    keys.hold();
    const at = document.body;
    let sent;
    do {
        sent = await unsent.sendAll();
    } while (sent.reached && unsent.has(id));
    const own = sent.answers.find(answer => answer.entry.id === id);
    sent.answers.filter(answer => !answer.ok && (answer !== own || at !== document.body))
        .forEach(answer => unsent.keepRefused(answer.entry, answer));
    if (!own && sent.reached) {
        // another window sent it, and shows what became of it
        drafts.dropDrafts(form);
        await page.go(location.href, {push: false, top: false});
    } else if (!own) {
        // it waits in the list; the form is free for the next one, but the same step is not done twice
        drafts.dropDrafts(form);
        if (typing) {
            form.reset();
            drafts.typedFields(form).forEach(e => { e.value = ""; });
            setId(form);
            buttons.forEach(b => { b.disabled = false; });
            drafts.typedFields(form)[0]?.focus();
        }
        again();
    } else if (own.ok) {
        drafts.dropDrafts(form);
        if (at === document.body && !page.show(own.html, own.url)) location.assign(own.url);
    } else if (at === document.body) {
        refused(own, drafts.identity(form), buttons);
    }
    notice.show();
    keys.release(!own || own.ok);
}

/** Shows the answer that refuses an entry, with everything that was typed in it. */
function refused(answer, identity, buttons) {
    if (!page.show(answer.html, location.href, {push: false})) {
        buttons.forEach(b => { b.disabled = false; });
        notice.say("Not kept: the bench server could not take it (" + answer.status + "). What you typed is still here.");
        return;
    }
    const form = Array.from(document.querySelectorAll("form[data-keep]")).find(f => drafts.identity(f) === identity);
    if (form) {
        drafts.refill(form, answer.entry.fields);
        // it never was away: it stands there as it was sent
        form.querySelector(".restored")?.remove();
    } else if (answer.entry.words) notice.say("The form you sent is not on this page any more. In it stood: " + answer.entry.words);
}

function again() {
    clearTimeout(retry);
    notice.show();
    if (unsent.waiting().length) retry = setTimeout(sendWaiting, AGAIN_MS);
}

/** Sends what waits from before; the page comes anew unless someone is typing on it. */
export async function sendWaiting() {
    if (!unsent.waiting().length) return;
    const sent = await unsent.sendAll();
    sent.answers.filter(answer => !answer.ok).forEach(answer => unsent.keepRefused(answer.entry, answer));
    const typing = Array.from(document.querySelectorAll("form[data-keep]"))
        .some(form => drafts.typedFields(form).some(field => field.value !== field.defaultValue));
    const last = sent.answers.at(-1);
    if (last && !typing) {
        const to = last.ok && new URL(last.url).pathname === location.pathname ? last.url : location.href;
        await page.go(to, {top: false});
    } else if (last) {
        notice.say("What waited was sent. This page shows it when you have finished typing and open it again.");
    }
    again();
}

addEventListener("online", sendWaiting);
addEventListener("storage", () => notice.show());

function setId(form) {
    const id = form.elements.namedItem("entry");
    if (id) id.value = unsent.newId();
}

/** A form that makes an entry. */
export function keeps(form) {
    setId(form);
    drafts.keepDrafts(form);
    form.addEventListener("submit", event => {
        event.preventDefault();
        send(form, event.submitter);
    });
    form.querySelectorAll("[data-tick-all]").forEach(all => all.addEventListener("change", () => {
        form.querySelectorAll(`input[type=checkbox][name="${all.dataset.tickAll}"]`).forEach(one => { one.checked = all.checked; });
    }));
    form.querySelectorAll("[data-send]").forEach(file => file.addEventListener("change", () => form.requestSubmit()));
    // Enter, a foot pedal or a gauge that types like a keyboard: on to the next empty number, then send.
    form.addEventListener("keydown", event => {
        if (event.key !== "Enter" || event.target.tagName !== "INPUT") return;
        const numbers = Array.from(form.querySelectorAll("input[data-pad]"));
        const empty = numbers.slice(numbers.indexOf(event.target) + 1).find(e => !e.value);
        if (numbers.includes(event.target) && event.target.value && empty) {
            event.preventDefault();
            empty.focus();
        }
    });
}

/** A worksheet: Enter goes on to the next empty field, then sends; in a list Enter makes a line, on an empty line it goes on. */
export function goesOn(form) {
    form.addEventListener("keydown", event => {
        const field = event.target;
        if (event.key !== "Enter" || !field.matches("[data-on]")) return;
        const lines = field.tagName === "TEXTAREA";
        if (lines && field.value && !field.value.endsWith("\n")) return;
        if (lines) field.value = field.value.trimEnd();
        const fields = Array.from(form.querySelectorAll("[data-on]")).filter(e => !e.closest("details:not([open])"));
        const empty = fields.slice(fields.indexOf(field) + 1).find(e => !e.value && !e.placeholder);
        event.preventDefault();
        if (field.value && empty) empty.focus();
        else form.requestSubmit();
    });
    // an address without empty names is one worth keeping
    form.addEventListener("submit", () => Array.from(form.elements)
        .filter(e => e.name && !e.value).forEach(e => { e.disabled = true; setTimeout(() => { e.disabled = false; }); }));
}
