// What is next in each job: asked for when its card comes into view, one after the other, because it needs a plan.
let last = Promise.resolve();

async function fill(card) {
    if (!card.isConnected) return;
    try {
        const answer = await fetch(card.dataset.card);
        if (!answer.ok) return;
        const whole = new DOMParser().parseFromString(await answer.text(), "text/html").querySelector("a.job");
        if (!whole) return;
        card.setAttribute("href", whole.getAttribute("href"));
        card.replaceChildren(...whole.childNodes);
    } catch (unreached) {
        return; // the card stays as it is, and opens its job
    }
}

export function cards() {
    const view = new IntersectionObserver(seen => seen.filter(one => one.isIntersecting).forEach(one => {
        view.unobserve(one.target);
        last = last.then(() => fill(one.target));
    }));
    document.querySelectorAll("[data-card]").forEach(card => view.observe(card));
}
