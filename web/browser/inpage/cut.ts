import { cutters, holds, pieces, type Box } from './text';

function scrolls(element: Element, axis: 'overflowX' | 'overflowY'): boolean {
    return ['auto', 'scroll'].includes(getComputedStyle(element)[axis]);
}

/** A place that may be scrolled sideways on purpose: a key reaches it and it has a name, or it is the editor. */
function scrollsSideways(element: Element): boolean {
    return (
        element.matches('.cm-scroller, [role="region"][aria-label][tabindex="0"]') &&
        scrolls(element, 'overflowX')
    );
}

function beyond(box: Box, edge: Box, x: boolean, y: boolean): boolean {
    const slackPx = 1.5;
    return (
        (x && (box.left < edge.left - slackPx || box.right > edge.right + slackPx)) ||
        (y && (box.top < edge.top - slackPx || box.bottom > edge.bottom + slackPx))
    );
}

/** Texts that cannot be read whole: cut by what holds them, or out at a side of the page. */
export function cutTexts(): string[] {
    const found: string[] = [];
    for (const piece of pieces()) {
        const page = {
            left: 0,
            right: document.documentElement.clientWidth,
            top: -1e7,
            bottom: 1e7,
        };
        const cuts = cutters(piece.element);
        const sideways = cuts.some(cut => scrollsSideways(cut.by));
        for (const box of piece.whole) {
            // What scrolls down may hide its text above and below; what only cuts may not.
            const by = cuts.find(cut =>
                beyond(
                    box,
                    cut.box,
                    cut.x && !sideways,
                    cut.y && !scrolls(cut.by, 'overflowY') && inSight(box, cuts, cut.by),
                ),
            );
            if (by !== undefined) {
                found.push(`“${piece.text}” is cut by ${named(by.by)}`);
                break;
            }
            if (!sideways && beyond(box, page, true, false)) {
                found.push(`“${piece.text}” stands beyond a side of the page`);
                break;
            }
        }
    }
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth + 1) {
        found.push(`the page is ${scrollWidth} px wide where ${clientWidth} px are seen`);
    }
    return found;
}

/** Whether a scroller inside `by` has not already hidden the box. */
function inSight(box: Box, cuts: { by: Element; box: Box; y: boolean }[], by: Element): boolean {
    return !cuts.some(
        cut =>
            holds(by, cut.by) &&
            cut.by !== by &&
            cut.y &&
            scrolls(cut.by, 'overflowY') &&
            (box.top < cut.box.top - 1.5 || box.bottom > cut.box.bottom + 1.5),
    );
}

export function named(element: Element): string {
    const id = element.id === '' ? '' : `#${element.id}`;
    const classes = element.getAttribute('class') ?? '';
    const dotted = classes.trim() === '' ? '' : `.${classes.trim().split(/\s+/).join('.')}`;
    return `${element.tagName.toLowerCase()}${id}${dotted}`;
}
