// The small script of the bench: entry ids made here, nothing typed lost, Enter moves on, clocks run.
// Every page works without it; with it a dropped network loses nothing.
"use strict";

const DRAFTS = "shimwright.draft:";
const WAITING = "shimwright.waiting";
const AGAIN_MS = 3000;

/** An id for an entry; getRandomValues also works where the page is not served over TLS. */
function entryId() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return "c-" + Array.from(bytes, b => b.toString(16).padStart(2, "0")).join("");
}

function draftKey(form, field) {
    return DRAFTS + location.pathname + ":" + form.getAttribute("action") + ":" + field.name;
}

function typedFields(form) {
    return Array.from(form.elements).filter(e => e.name && (e.tagName === "TEXTAREA"
        || (e.tagName === "INPUT" && !["hidden", "radio", "checkbox", "file"].includes(e.type))));
}

function keepDrafts(form) {
    for (const field of typedFields(form)) {
        const kept = localStorage.getItem(draftKey(form, field));
        if (kept && !field.value) field.value = kept;
        field.addEventListener("input", () => localStorage.setItem(draftKey(form, field), field.value));
    }
}

function dropDrafts(form) {
    for (const field of typedFields(form)) localStorage.removeItem(draftKey(form, field));
}

function say(text) {
    const box = document.getElementById("not-kept");
    if (!box) return;
    box.hidden = !text;
    box.textContent = text;
}

/** Posts one entry; answers where to go, or throws when the server was not reached. */
async function post(action, data) {
    const multipart = Array.from(data.values()).some(v => v instanceof File);
    const body = multipart ? data : new URLSearchParams(data);
    const answer = await fetch(action, {method: "POST", body, redirect: "follow"});
    if (answer.status >= 502) throw new Error("no server");
    return {ok: answer.ok, url: answer.url, html: await answer.text()};
}

function showPage(answer) {
    if (answer.ok && new URL(answer.url).href !== location.href.split("#")[0]) {
        location.assign(answer.url);
    } else if (answer.ok) {
        location.reload();
    } else {
        document.open();
        document.write(answer.html);
        document.close();
    }
}

async function send(form, submitter) {
    const data = new FormData(form, submitter);
    const buttons = form.querySelectorAll("button");
    buttons.forEach(b => b.disabled = true);
    for (let tries = 0; ; tries++) {
        try {
            const answer = await post(form.getAttribute("action"), data);
            say("");
            localStorage.removeItem(WAITING);
            if (answer.ok) dropDrafts(form);
            showPage(answer);
            return;
        } catch (unreached) {
            say("Not kept yet: the bench server does not answer. What you typed stays here and is sent again by itself. Leave this page open.");
            remember(form, data);
            await new Promise(r => setTimeout(r, AGAIN_MS));
        }
    }
}

/** A page closed or a battery gone while an entry waits: it is sent when the page is opened again, under the same id. */
function remember(form, data) {
    const plain = Array.from(data.entries()).filter(([, v]) => typeof v === "string");
    localStorage.setItem(WAITING, JSON.stringify({action: form.getAttribute("action"), fields: plain}));
}

async function sendWaiting() {
    const waiting = JSON.parse(localStorage.getItem(WAITING) || "null");
    if (!waiting) return;
    const data = new FormData();
    waiting.fields.forEach(([name, value]) => data.append(name, value));
    try {
        const answer = await post(waiting.action, data);
        localStorage.removeItem(WAITING);
        if (answer.ok) location.assign(answer.url);
        else showPage(answer);
    } catch (unreached) {
        setTimeout(sendWaiting, AGAIN_MS);
    }
}

function wire(form) {
    const id = form.elements.namedItem("entry");
    if (id) id.value = entryId();
    keepDrafts(form);
    form.addEventListener("submit", event => {
        event.preventDefault();
        send(form, event.submitter);
    });
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
function goesOn(form) {
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
        .filter(e => e.name && !e.value).forEach(e => { e.disabled = true; setTimeout(() => e.disabled = false); }));
}

/** A number pad for greasy hands: shown on touch screens while a reading is typed. */
function pad() {
    if (!matchMedia("(pointer: coarse)").matches) return;
    const inputs = document.querySelectorAll("input[data-pad]");
    if (!inputs.length) return;
    let into = null;
    const box = document.createElement("div");
    box.className = "pad";
    box.hidden = true;
    for (const key of ["7", "8", "9", ".", "−", "⌫", "4", "5", "6", "0", " ", "±", "1", "2", "3", "mm", "in", "Enter"]) {
        const button = document.createElement("button");
        button.type = "button";
        button.tabIndex = -1;
        button.textContent = key === " " ? "␣" : key;
        if (key === "Enter") button.className = "go";
        if (key === "mm" || key === "in") button.dataset.unit = key;
        button.addEventListener("pointerdown", event => {
            event.preventDefault();
            if (into) press(into, button.dataset.unit ? button.textContent : key, button.dataset.unit);
        });
        box.append(button);
    }
    document.body.append(box);
    inputs.forEach(input => {
        input.inputMode = "none";
        input.addEventListener("focus", () => open(input));
        input.addEventListener("blur", () => {
            box.hidden = true;
            document.body.classList.remove("padded");
        });
    });
    function open(input) {
        into = input;
        const units = (input.dataset.units ?? "mm|in").split("|");
        box.querySelectorAll("[data-unit]").forEach((button, i) => {
            button.textContent = units[i] || "";
            button.style.visibility = units[i] ? "visible" : "hidden";
        });
        box.hidden = false;
        document.body.classList.add("padded");
    }
    if (document.activeElement && document.activeElement.matches("input[data-pad]")) open(document.activeElement);
}

function press(input, key, unit) {
    if (key === "Enter") {
        const event = new KeyboardEvent("keydown", {key: "Enter", bubbles: true, cancelable: true});
        if (input.dispatchEvent(event)) input.form.requestSubmit();
        return;
    }
    if (key === "⌫") input.value = input.value.slice(0, -1);
    else if (unit) input.value = input.value.replace(/\s*[^\d\s.,±+-][^\d]*$/, "") + " " + key;
    else input.value += key === "−" ? "-" : key;
    input.dispatchEvent(new Event("input", {bubbles: true}));
}

function spoken(ms) {
    const s = Math.round(Math.abs(ms) / 1000);
    const h = Math.floor(s / 3600), m = Math.floor(s / 60) % 60;
    const two = n => String(n).padStart(2, "0");
    return h ? h + ":" + two(m) + ":" + two(s % 60) : m + ":" + two(s % 60);
}

function tick() {
    document.querySelectorAll("[data-until]").forEach(timer => {
        const left = Number(timer.dataset.until) - Date.now();
        const over = left < 0;
        timer.classList.toggle("over", over && timer.dataset.must === "true");
        timer.querySelector(".left").textContent = over
            ? (timer.dataset.must === "true" ? "over by " + spoken(left) : "ended") : spoken(left) + " left";
    });
}

function clocks() {
    document.querySelectorAll("[data-clock]").forEach(button => button.addEventListener("click", () => {
        const timer = document.createElement("p");
        timer.className = "timer must";
        timer.dataset.until = String(Date.now() + Number(button.dataset.clock) * 1000);
        timer.dataset.must = "true";
        timer.innerHTML = "<b>Window</b> <span class=\"left\"></span>";
        button.replaceWith(timer);
        tick();
    }));
}

/* A page that tells how something goes looks again, unless someone is typing in it. */
function again() {
    const going = document.querySelector("[data-again]");
    if (going) {
        setTimeout(() => {
            if (document.activeElement.matches("input, textarea, select")) {
                again();
            } else {
                location.replace(location.pathname + location.search);
            }
        }, Number(going.dataset.again));
    }
}

document.querySelectorAll("form[data-keep]").forEach(wire);
document.querySelectorAll("form[data-on]").forEach(goesOn);
document.querySelectorAll("[data-here]").forEach(e => e.value = location.pathname + location.search);
pad();
clocks();
again();
tick();
setInterval(tick, 1000);
sendWaiting();
