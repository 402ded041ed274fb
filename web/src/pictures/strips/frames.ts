/** Longest stretch of drawing within one frame, ms: what is left over is drawn in the next. */
const SLICE_MS = 8;

const waiting = new Map<object, () => void>();
let asked = false;

/**
 * Draws with the next frame; what was to be drawn for the same before is not. Nothing waits: no frame is
 * asked for.
 *
 * @param what is drawn: the last one asked for it counts
 */
export function drawSoon(what: object, draw: () => void): void {
    waiting.set(what, draw);
    ask();
}

/** It is gone: nothing of it is drawn any more. */
export function drawNoMore(what: object): void {
    waiting.delete(what);
}

function ask(): void {
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
        asked = false;
        const until = performance.now() + SLICE_MS;
        for (const [what, draw] of waiting) {
            waiting.delete(what);
            draw();
            if (performance.now() > until) break;
        }
        if (waiting.size > 0) ask();
    });
}
