// Forms: an entry is written down, sent and shown; Enter goes on to the next empty field, then sends.
import * as drafts from "./drafts.js";
import * as keys from "./keys.js";
import * as memory from "./memory.js";
import * as notice from "./notice.js";
import * as page from "./page.js";
import * as unsent from "./unsent.js";
import {said as inWords} from "./words.js";

const AGAIN_MS = 3000;
let retry = 0;

/** An entry in words, for the list of what waits: what was typed, else what was pressed. */
function words(form, data, submitter) {
    const beside = Array.from(form.elements).filter(e => e.type === "hidden" || e.tagName === "SELECT").map(e => e.name);
    const typed = Array.from(data.entries())
        .filter(([name, value]) => value && !beside.includes(name))
        .map(([, value]) => value instanceof File ? "picture " + value.name : value);
    const pressed = submitter?.textContent.trim() ?? "";
    const about = ["step", "limit"].map(name => data.get(name)).find(Boolean)
        ?? document.querySelector(".step .at b")?.textContent ?? "";
    return [about, typed.join(", ") || pressed].filter(Boolean).join(": ");
}

async function send(form, submitter) {
    const data = new FormData(form, submitter);
    if (submitter?.name && !data.has(submitter.name)) data.append(submitter.name, submitter.value);
    const corrects = form.dataset.corrects;
    const typed = data.get("entry");
    const id = corrects && unsent.has(corrects) ? corrects : typed && !unsent.has(typed) ? typed : unsent.newId();
    data.set("entry", id);
    const more = drafts.typedFields(form).some(e => e.value) || Array.from(data.values()).some(v => v instanceof File && v.size);
    // a form may have a second button that sends it elsewhere
    const action = submitter?.getAttribute("formaction") ?? form.getAttribute("action");
    const said = words(form, data, submitter);
    const written = id === corrects ? unsent.replace(id, corrected(id, data), said)
        : unsent.add({id, action, page: location.href, form: drafts.identity(form), once: !more, fields: Array.from(data), words: said});
    const buttons = Array.from(form.querySelectorAll("button"));
    buttons.forEach(b => { b.disabled = true; });
    keys.hold();
    const at = document.body;
    let sent;
    const answers = [];
    do {
        sent = await unsent.sendAll();
        answers.push(...sent.answers);
    } while (sent.reached && unsent.has(id) && !unsent.behind(id) && !unsent.get(id).faults);
    const own = answers.findLast(answer => answer.entry.id === id);
    if (!own && !unsent.has(id)) {
        // another window sent it, and shows what became of it
        drafts.dropDrafts(form);
        await page.go(location.href, {push: false, top: false});
    } else if (!own) {
        await written;
        drafts.dropDrafts(form);
        await onward(form, more);
        again();
    } else if (own.ok) {
        drafts.dropDrafts(form);
        memory.keep(own.html, own.url);
        if (at === document.body && !page.show(own.html, own.url)) location.assign(own.url);
    } else if (at === document.body) {
        const form = refused(own, own.entry, buttons);
        // what is put right keeps its place before what waits behind it
        if (id !== corrects) await unsent.drop(id);
        else if (form) form.dataset.corrects = id;
    }
    notice.show();
    keys.release(!own || own.ok);
}

/** What was put right, with the picture of before where none was chosen anew. */
function corrected(id, data) {
    const before = unsent.get(id).fields;
    return Array.from(data, ([name, value]) => value instanceof File && !value.size
        ? before.find(([other, file]) => other === name && file instanceof File) ?? [name, value] : [name, value]);
}

/** After an entry that waits: the form is free for the next one, or the page that comes next is opened, if it is known. */
async function onward(form, more) {
    const link = form.dataset.then ? document.querySelector(form.dataset.then) : null;
    if (link) {
        await page.go(link.href);
        return;
    }
    waits();
    if (!more) return;
    form.reset();
    delete form.dataset.corrects;
    drafts.typedFields(form).forEach(e => { e.value = ""; });
    setId(form);
    form.querySelectorAll("button").forEach(b => { b.disabled = false; });
    const alike = Array.from(document.querySelectorAll("form[data-keep]")).filter(other =>
        other.action === form.action && other.querySelector("[data-pad]")?.getClientRects().length);
    const after = form.querySelector("[data-pad]") ? alike[alike.indexOf(form) + 1] ?? form : form;
    drafts.typedFields(after)[0]?.focus();
}

/** A button that was pressed and waits is not pressed twice. */
export function waits() {
    const pressed = unsent.waiting().filter(entry => entry.once).map(entry => entry.form);
    document.querySelectorAll("form[data-keep]").forEach(form => {
        const there = pressed.includes(drafts.identity(form));
        if (there) form.querySelectorAll("button").forEach(b => { b.disabled = true; });
        else if (form.dataset.waits) form.querySelectorAll("button").forEach(b => { b.disabled = false; });
        if (there) form.dataset.waits = "yes";
        else delete form.dataset.waits;
    });
}

/** The form in which an entry was typed: that very one, for what was meant for one step is not put into the form of the next. */
function formOf(entry) {
    return Array.from(document.querySelectorAll("form[data-keep]")).find(form => drafts.identity(form) === entry.form);
}

/** Puts an entry back into its form; says what stood in it where there is none. */
function refill(entry) {
    const form = formOf(entry);
    if (form) {
        drafts.refill(form, entry.fields);
        // it never was away: it stands there as it was sent
        form.querySelector(".restored")?.remove();
    } else if (entry.words) notice.say(inWords("The form you sent is not on this page any more. In it stood: {0}", entry.words));
    return form;
}

/** Shows the answer that refuses an entry, with everything that was typed in it. */
function refused(answer, entry, buttons) {
    if (!page.show(answer.html, answer.entry.page, {push: false})) {
        buttons.forEach(b => { b.disabled = false; });
        notice.say(inWords("Not kept: the bench server could not take it ({0}). What you typed is still here.", String(answer.status)));
        return null;
    }
    return refill(entry);
}

/** An entry that was refused later is asked about again: kept now, or shown with its faults in the form in which it stood. */
async function correct(id) {
    const entry = unsent.get(id);
    const answer = await unsent.again(id);
    if (!answer) {
        notice.say(inWords("The bench server does not answer, so it cannot be put right yet."));
    } else if (answer.ok) {
        page.show(answer.html, answer.url);
        sendWaiting();
    } else {
        history.pushState(null, "", entry.page);
        const form = refused(answer, entry, []);
        if (form) form.dataset.corrects = id;
        notice.show();
    }
}

/** Takes an entry that waits back into its form, or drops one that was refused; the others go on. */
async function back(id, again) {
    const entry = unsent.get(id);
    await unsent.drop(id);
    waits();
    if (again) notice.say(inWords("Taken back, and not sent: {0}", entry.words));
    if (again && formOf(entry)) refill(entry);
    sendWaiting();
}

function again() {
    clearTimeout(retry);
    notice.show();
    if (unsent.waiting().some(entry => !unsent.behind(entry.id))) retry = setTimeout(sendWaiting, AGAIN_MS);
}

/** Sends what waits from before; the page comes anew unless someone is typing on it. */
export async function sendWaiting() {
    await unsent.load();
    if (!unsent.waiting().length) return;
    const sent = await unsent.sendAll();
    const typing = Array.from(document.querySelectorAll("form[data-keep]"))
        .some(form => drafts.typedFields(form).some(field => field.value !== field.defaultValue));
    const last = sent.answers.findLast(answer => answer.ok);
    if (last && !typing) {
        const to = new URL(last.url).pathname === location.pathname ? last.url : location.href;
        await page.go(to, {push: false, top: false});
    } else if (last) {
        notice.say(inWords("What waited was sent. This page shows it when you have finished typing and open it again."));
    }
    again();
}

addEventListener("online", sendWaiting);
notice.on({correct, back: id => back(id, true), drop: id => back(id, false)});
unsent.onChange(() => {
    waits();
    notice.show();
});

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
