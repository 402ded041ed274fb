// What the page costs whoever looks at it, measured from inside.

interface Late {
    resolve: (ms: number) => void;
    from: number;
}

const longTasks: number[] = [];
let frames = 0;
let pointerAt = 0;
let waiting: Late | null = null;

/**
 * Notes every long task, every frame the page asks for, and when the pointer was last moved. `nominal`
 * selects what shows the nominal answer.
 */
export function startWatching(nominal: string): void {
    new PerformanceObserver(list => {
        longTasks.push(...list.getEntries().map(entry => entry.duration));
    }).observe({ type: 'longtask' });
    const ask = globalThis.requestAnimationFrame.bind(globalThis);
    globalThis.requestAnimationFrame = callback => {
        frames++;
        return ask(callback);
    };
    addEventListener(
        'pointermove',
        event => {
            pointerAt = event.timeStamp;
        },
        { capture: true },
    );
    let before = '';
    const text = () =>
        [...document.querySelectorAll(nominal)].map(one => one.textContent).join('\n');
    new MutationObserver(() => {
        const now = text();
        if (now === before) {
            return;
        }
        before = now;
        const late = waiting;
        if (late !== null && pointerAt >= late.from) {
            waiting = null;
            ask(() => {
                // The frame that this callback belongs to is the one that shows the text.
                ask(at => {
                    late.resolve(at - pointerAt);
                });
            });
        }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
    before = text();
}

/** From the next move of the pointer to the frame after the one that first shows another nominal text, ms. */
export function nextNominal(withinMs: number): Promise<number> {
    return new Promise((resolve, reject) => {
        waiting = { resolve, from: performance.now() };
        setTimeout(() => {
            if (waiting?.resolve === resolve) {
                waiting = null;
                reject(new Error(`no other nominal text within ${withinMs} ms`));
            }
        }, withinMs);
    });
}

/** Long tasks so far, ms each, and how often the page asked for a frame. */
export function watched(): { longTasksMs: number[]; frames: number } {
    return { longTasksMs: [...longTasks], frames };
}
