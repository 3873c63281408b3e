// Marks on a picture: drawn with a finger, a mouse or the arrow keys, kept as lines of the form in shares of the picture.
import {say} from "./notice.js";
import {said} from "./words.js";

const NS = "http://www.w3.org/2000/svg";
const WIDE = 1000;
const STEP = 0.03;
const FINE = 0.005;
const NEAR = 0.008;
const MOST = 60;
const WAYS = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]};

/** The board of a page that has one. */
export function marks() {
    const box = document.querySelector("[data-marks]");
    if (box && !box.querySelector(".draw")) board(box);
}

const share = value => Math.min(1, Math.max(0, value));

function element(name, attributes, words) {
    const made = document.createElementNS(NS, name);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    if (words) made.textContent = words;
    return made;
}

/** What a line of the form says; nothing where it says no mark. */
function read(line) {
    const parts = line.trim().split(/\s+/);
    const numbers = parts[0] === "text" ? parts.slice(1, 3) : parts.slice(1);
    const at = numbers.map(Number);
    if (at.length < 2 || at.some(n => !(n >= 0 && n <= 1))) return null;
    return {shape: parts[0], at, text: parts[0] === "text" ? parts.slice(3).join(" ") : ""};
}

const written = mark => [mark.shape, ...mark.at.map(n => n.toFixed(4)), mark.text].join(" ").trim();

function outline({shape, at}, high) {
    const x = i => at[2 * i] * WIDE;
    const y = i => at[2 * i + 1] * high;
    const to = i => x(i) + " " + y(i);
    if (shape === "ring") {
        const [rx, ry] = [Math.abs(x(1) - x(0)) / 2, Math.abs(y(1) - y(0)) / 2];
        const [cx, cy] = [(x(0) + x(1)) / 2, (y(0) + y(1)) / 2];
        return `M${cx - rx} ${cy}A${rx} ${ry} 0 1 1 ${cx + rx} ${cy}A${rx} ${ry} 0 1 1 ${cx - rx} ${cy}Z`;
    }
    if (shape === "arrow") {
        const way = Math.atan2(y(1) - y(0), x(1) - x(0));
        const wing = turn => `M${to(1)}L${x(1) + 26 * Math.cos(way + turn)} ${y(1) + 26 * Math.sin(way + turn)}`;
        return `M${to(0)}L${to(1)}` + wing(2.6) + wing(-2.6);
    }
    return Array.from({length: at.length / 2}, (_, i) => (i ? "L" : "M") + to(i)).join("");
}

function drawn(mark, high) {
    if (mark.shape === "text") {
        const at = {x: mark.at[0] * WIDE, y: mark.at[1] * high, class: "words"};
        return [element("text", at, mark.text)];
    }
    const d = outline(mark, high);
    return [element("path", {d, class: "edge"}), element("path", {d, class: "ink"})];
}

function board(box) {
    const form = box.closest("form");
    const lines = form.querySelector("[data-lines]");
    const words = form.querySelector("[data-marktext]");
    const high = WIDE * Number(box.dataset.tall);
    const svg = element("svg", {class: "draw", viewBox: `0 0 ${WIDE} ${high}`, tabindex: "0", role: "application",
        "aria-label": said("Draw here: arrow keys move the cross, Enter sets a point")});
    let now = null;
    let cross = [0.5, 0.5];
    box.append(svg);

    const tool = () => form.querySelector("[name=tool]:checked").value;
    const kept = () => lines.value.split("\n").map(read).filter(Boolean);

    function show() {
        const [x, y] = [cross[0] * WIDE, cross[1] * high];
        const marks = now ? [...kept(), now] : kept();
        svg.replaceChildren(...marks.flatMap(mark => drawn(mark, high)),
            element("path", {d: `M${x - 24} ${y}h48M${x} ${y - 24}v48`, class: "cross"}));
    }

    function write(marks) {
        lines.value = marks.map(written).join("\n");
        lines.dispatchEvent(new Event("input", {bubbles: true}));
    }

    function begin(at) {
        if (tool() !== "text") now = {shape: tool(), at: [...at, ...at], text: ""};
        else if (words.value.trim()) write([...kept(), {shape: "text", at, text: words.value.trim().replace(/;/g, ",")}]);
        else {
            say(said("Type first what is to stand there, then tap its place."));
            words.focus();
        }
        show();
    }

    function move(at) {
        const last = now.at.slice(-2);
        if (now.shape !== "line") now.at = [...now.at.slice(0, 2), ...at];
        else if (Math.hypot(at[0] - last[0], at[1] - last[1]) > NEAR) now.at.push(...at);
        if (now.at.length > 2 * MOST) now.at = now.at.filter((_, i, all) => i < 2 || i > all.length - 3 || i % 4 < 2);
        show();
    }

    function end() {
        const [x, y] = now.at;
        const far = now.at.some((n, i) => Math.abs(n - (i % 2 ? y : x)) > NEAR);
        const mark = now;
        now = null;
        if (far) write([...kept(), mark]);
        show();
    }

    function undo() {
        if (now) now = null;
        else write(kept().slice(0, -1));
        show();
    }

    function place(event) {
        const area = svg.getBoundingClientRect();
        return [share((event.clientX - area.left) / area.width), share((event.clientY - area.top) / area.height)];
    }

    svg.addEventListener("pointerdown", event => {
        if (event.button) return;
        event.preventDefault();
        svg.setPointerCapture(event.pointerId);
        cross = place(event);
        begin(cross);
    });
    svg.addEventListener("pointermove", event => {
        if (now && svg.hasPointerCapture(event.pointerId)) move(cross = place(event));
    });
    svg.addEventListener("pointerup", () => { if (now) end(); });
    svg.addEventListener("pointercancel", () => { now = null; show(); });
    svg.addEventListener("keydown", event => {
        const way = WAYS[event.key];
        if (way) {
            const far = event.shiftKey ? FINE : STEP;
            cross = [share(cross[0] + far * way[0]), share(cross[1] + far * way[1])];
            if (now) move(cross);
            else show();
        } else if (event.key === "Enter" || event.key === " ") {
            if (now) end();
            else begin(cross);
        } else if (event.key === "Escape") {
            now = null;
            show();
        } else if (event.key === "Backspace") undo();
        else return;
        event.preventDefault();
    });
    form.querySelector("[data-undo]").addEventListener("click", undo);
    form.querySelectorAll("[name=tool]").forEach(choice => choice.addEventListener("change", () => {
        words.closest("label").hidden = tool() !== "text";
    }));
    lines.addEventListener("change", show);
    show();
}
