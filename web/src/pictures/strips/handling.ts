import { effect } from '@preact/signals';
import { lengthOf, type Span } from '../../core/span';
import { drawSoon } from './frames';
import type { Looking } from './looking';
import { LEFT } from './painter';

/** A shorter drag is a click, pixels. */
const LEAST_DRAG = 5;
/** One turn of a wheel, pixels of its own. */
const WHEEL = 400;

/** Pointer and wheel over the strips; returns what ends it. */
export function handled(home: HTMLElement, looking: Looking): () => void {
    const ended = new AbortController();
    const { signal } = ended;
    const timeAt = (clientX: number): number => {
        const span = looking.span.peek();
        const left = home.getBoundingClientRect().left + LEFT;
        const share = (clientX - left) / looking.width.peek();
        return span.from + Math.min(1, Math.max(0, share)) * lengthOf(span);
    };
    let from: number | undefined;
    let to = 0;
    const picked = (): Span | undefined =>
        from === undefined || Math.abs(to - from) < LEAST_DRAG
            ? undefined
            : { from: timeAt(Math.min(from, to)), to: timeAt(Math.max(from, to)) };
    const select = (at: Span | undefined): void => {
        mark(home, '.strip-picked', at, looking.span.peek(), looking.width.peek());
    };
    const pointTo = {};
    const on = <K extends keyof HTMLElementEventMap>(
        type: K,
        then: (event: HTMLElementEventMap[K]) => void,
    ): void => {
        home.addEventListener(type, then, { signal, passive: false });
    };
    on('pointerdown', event => {
        if (event.button !== 0 || !(event.target instanceof HTMLCanvasElement)) return;
        from = to = event.clientX;
        home.setPointerCapture(event.pointerId);
    });
    on('pointermove', event => {
        const { clientX } = event;
        to = clientX;
        drawSoon(pointTo, () => {
            looking.point(timeAt(clientX));
            select(picked());
        });
    });
    on('pointerup', event => {
        to = event.clientX;
        const span = picked();
        from = undefined;
        select(undefined);
        if (span !== undefined) looking.look(span);
    });
    on('pointercancel', () => {
        from = undefined;
        select(undefined);
    });
    on('pointerleave', () => {
        if (from !== undefined || home.contains(document.activeElement)) return;
        drawSoon(pointTo, () => {
            looking.point(undefined);
        });
    });
    on('dblclick', () => {
        looking.all();
    });
    on('wheel', event => {
        if (event.ctrlKey || event.metaKey) {
            event.preventDefault();
            looking.zoom(timeAt(event.clientX), Math.exp(event.deltaY / WHEEL));
        } else if (event.deltaX !== 0 && Math.abs(event.deltaX) > Math.abs(event.deltaY)) {
            event.preventDefault();
            looking.move(event.deltaX / looking.width.peek());
        }
    });
    const end = effect(() => {
        const { span, width } = looking.view.value;
        const at = looking.cursor.value;
        mark(
            home,
            '.strip-cursor',
            at === undefined ? undefined : { from: at, to: at },
            span,
            width,
        );
    });
    return () => {
        end();
        ended.abort();
    };
}

/** Lays a mark over the strips between two times, or takes it away. */
function mark(
    home: HTMLElement,
    what: string,
    at: Span | undefined,
    span: Span,
    width: number,
): void {
    const element = home.querySelector<HTMLElement>(what);
    if (!element) return;
    const x = (time: number): number => LEFT + ((time - span.from) / lengthOf(span)) * width;
    const out = at === undefined || at.to < span.from || at.from > span.to;
    element.hidden = out;
    if (out) return;
    element.style.transform = `translateX(${x(at.from)}px)`;
    element.style.width = `${Math.max(1, x(at.to) - x(at.from))}px`;
}

/** A key on the clock; whether it was one of its own. */
export function keyed(
    event: { key: string; shiftKey: boolean; ctrlKey: boolean; altKey: boolean; metaKey: boolean },
    looking: Looking,
): boolean {
    if (event.ctrlKey || event.altKey || event.metaKey) return false;
    const span = looking.span.peek();
    const at = looking.cursor.peek() ?? (span.from + span.to) / 2;
    const step = lengthOf(span) / (event.shiftKey ? 10 : 100);
    switch (event.key) {
        case 'ArrowRight':
        case 'ArrowUp':
            looking.point(at + step);
            return true;
        case 'ArrowLeft':
        case 'ArrowDown':
            looking.point(at - step);
            return true;
        case 'Home':
            looking.point(span.from);
            return true;
        case 'End':
            looking.point(span.to);
            return true;
        case 'PageDown':
            looking.move(0.5);
            return true;
        case 'PageUp':
            looking.move(-0.5);
            return true;
        case '+':
        case '=':
            looking.zoom(at, 0.5);
            return true;
        case '-':
        case '−':
            looking.zoom(at, 2);
            return true;
        case '0':
            looking.all();
            return true;
        default:
            return false;
    }
}
