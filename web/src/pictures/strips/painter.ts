import type { StripDrawn } from '../../core/stripDrawn';
import type { Polyline } from '../../core/strips';
import { colours } from '../colour';

const FONT = '12px "Helvetica Neue", Arial, "Liberation Sans", "DejaVu Sans", sans-serif';
const TOKENS = ['--ink', '--quiet', '--line', '--band', '--sheet', '--mark-1', '--mark-2'] as const;

export type Inks = Record<(typeof TOKENS)[number], string>;

/** The colours of the page as a canvas knows them, read once for each theme. */
export function inksOf(home: HTMLElement): Inks {
    const colour = colours(home);
    return Object.fromEntries(TOKENS.map(token => [token, colour(token)])) as Inks;
}

/** Room for the words of values, pixels. */
export const LEFT = 56;

/** Fits the pixels of a canvas to the screen's; whether there is one to draw on. */
export function fitted(
    canvas: HTMLCanvasElement,
    width: number,
    height: number,
): CanvasRenderingContext2D | undefined {
    const ctx = canvas.getContext('2d');
    if (!ctx) return undefined;
    const ratio = devicePixelRatio;
    const wide = Math.round(width * ratio);
    const high = Math.round(height * ratio);
    if (canvas.width !== wide || canvas.height !== high) {
        canvas.width = wide;
        canvas.height = high;
    }
    ctx.setTransform(ratio, 0, 0, ratio, 0, 0);
    ctx.clearRect(0, 0, width, height);
    return ctx;
}

/** One strip on its canvas. */
export function paint(canvas: HTMLCanvasElement, drawn: StripDrawn, inks: Inks): void {
    const { width, height } = drawn;
    const ctx = fitted(canvas, LEFT + width, height);
    if (!ctx) return;
    ctx.font = FONT;
    ctx.textBaseline = 'middle';
    ctx.textAlign = 'right';
    ctx.fillStyle = inks['--quiet'];
    for (const { y, words } of drawn.acrosses) ctx.fillText(words, LEFT - 6, y);
    ctx.save();
    ctx.beginPath();
    ctx.rect(LEFT, 0, width, height);
    ctx.clip();
    ctx.translate(LEFT, 0);
    grid(ctx, drawn, inks['--line']);
    if (drawn.band.length > 4) {
        ctx.fillStyle = inks['--band'];
        ctx.beginPath();
        trace(ctx, drawn.band);
        ctx.fill();
    }
    for (const { x } of drawn.events) flag(ctx, x, height, inks['--quiet']);
    ctx.lineJoin = 'round';
    stroke(ctx, [drawn.expected], inks['--ink'], 1.4, [7, 4]);
    stroke(ctx, drawn.beside, inks['--mark-2'], 1.3, [2, 2]);
    stroke(ctx, drawn.measured, inks['--mark-1'], 1.5, []);
    for (const event of drawn.events) numbered(ctx, event, inks);
    ctx.restore();
    ctx.strokeStyle = inks['--ink'];
    ctx.lineWidth = 1.2;
    ctx.beginPath();
    ctx.moveTo(LEFT - 0.5, 0);
    ctx.lineTo(LEFT - 0.5, height);
    ctx.stroke();
}

function grid(ctx: CanvasRenderingContext2D, drawn: StripDrawn, ink: string): void {
    ctx.strokeStyle = ink;
    ctx.lineWidth = 1;
    ctx.beginPath();
    for (const x of drawn.downs) {
        ctx.moveTo(x, 0);
        ctx.lineTo(x, drawn.height);
    }
    for (const { y } of drawn.acrosses) {
        ctx.moveTo(0, y);
        ctx.lineTo(drawn.width, y);
    }
    ctx.stroke();
}

function trace(ctx: CanvasRenderingContext2D, line: Polyline): void {
    ctx.moveTo(line[0] ?? 0, line[1] ?? 0);
    for (let k = 2; k < line.length; k += 2) ctx.lineTo(line[k] ?? 0, line[k + 1] ?? 0);
}

function stroke(
    ctx: CanvasRenderingContext2D,
    lines: readonly Polyline[],
    ink: string,
    width: number,
    dash: number[],
): void {
    ctx.strokeStyle = ink;
    ctx.lineWidth = width;
    ctx.setLineDash(dash);
    ctx.beginPath();
    for (const line of lines) {
        if (line.length === 2)
            ctx.rect((line[0] ?? 0) - 1, (line[1] ?? 0) - 1, 2, 2); // alone
        else if (line.length > 2) trace(ctx, line);
    }
    ctx.stroke();
    ctx.setLineDash([]);
}

function flag(ctx: CanvasRenderingContext2D, x: number, height: number, ink: string): void {
    ctx.strokeStyle = ink;
    ctx.lineWidth = 1;
    ctx.setLineDash([3, 2]);
    ctx.beginPath();
    ctx.moveTo(x, 0);
    ctx.lineTo(x, height);
    ctx.stroke();
    ctx.setLineDash([]);
}

function numbered(
    ctx: CanvasRenderingContext2D,
    { x, number }: { x: number; number: number },
    inks: Inks,
): void {
    ctx.font = FONT;
    ctx.textAlign = 'left';
    ctx.textBaseline = 'top';
    ctx.lineWidth = 3;
    ctx.strokeStyle = inks['--sheet'];
    ctx.fillStyle = inks['--ink'];
    ctx.strokeText(String(number), x + 3, 2);
    ctx.fillText(String(number), x + 3, 2);
}

/** The clock under all strips. */
export function paintClock(
    canvas: HTMLCanvasElement,
    ticks: readonly { x: number; words: string }[],
    width: number,
    height: number,
    inks: Inks,
): void {
    const ctx = fitted(canvas, LEFT + width, height);
    if (!ctx) return;
    ctx.font = FONT;
    ctx.textAlign = 'center';
    ctx.textBaseline = 'top';
    ctx.fillStyle = inks['--quiet'];
    ctx.strokeStyle = inks['--ink'];
    ctx.lineWidth = 1.2;
    ctx.beginPath();
    ctx.moveTo(LEFT, 0.5);
    ctx.lineTo(LEFT + width, 0.5);
    for (const { x, words } of ticks) {
        ctx.moveTo(LEFT + x, 0);
        ctx.lineTo(LEFT + x, 5);
        const half = ctx.measureText(words).width / 2;
        ctx.fillText(words, Math.min(LEFT + x, LEFT + width - half), 8);
    }
    ctx.stroke();
}
