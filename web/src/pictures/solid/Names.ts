import { Labels, LETTER, type Box, type Label } from '../../core/labels';
import { named } from '../../core/rigLabels';
import type { Point } from '../../core/space';
import { thingName, type Seen, type Thing } from '../../core/things';
import { bitmapOf } from '../save';
import type { Naming } from './exhibit';
import type { Colour } from './shapes';

/** Half of the room about a place that a name keeps off. */
const HALF = 12;

/** Names over a canvas, none over another. */
export class Names {
    private placed: Label[] = [];

    constructor(
        private readonly canvas: HTMLCanvasElement,
        private readonly home: HTMLElement,
        private readonly colour: Colour,
    ) {}

    /** The chosen thing first, by its own name; then as many others as have room. */
    write(chosen: Thing | undefined, names: readonly Naming[], see: (p: Point) => Seen): void {
        const labels = new Labels(this.canvas.clientWidth, this.canvas.clientHeight);
        this.placed = [];
        const add = (words: string, at: readonly Point[]): void => {
            const found = labels.beside(
                named(
                    at.map(p => {
                        const { x, y } = see(p);
                        return box(x, y);
                    }),
                ),
                words,
            );
            if (found) {
                this.placed.push(found);
            }
        };
        if (chosen) {
            add(thingName(chosen), [chosen.from]);
        }
        for (const { words, at } of names) {
            if (at.length > 0 && words !== '') {
                add(words, at);
            }
        }
        write(this.home, this.placed);
    }

    /** What is on the canvas, with the names. */
    async bitmap(): Promise<Blob> {
        const copy = document.createElement('canvas');
        copy.width = this.canvas.width;
        copy.height = this.canvas.height;
        const pen = copy.getContext('2d');
        if (!pen) {
            throw new Error('this browser paints no bitmap');
        }
        pen.drawImage(this.canvas, 0, 0);
        const ratio = this.canvas.width / this.canvas.clientWidth;
        pen.scale(ratio, ratio);
        pen.font = `bold ${LETTER}px sans-serif`;
        pen.textAlign = 'center';
        pen.lineWidth = 3;
        for (const label of this.placed) {
            pen.strokeStyle = this.colour('--sheet');
            pen.strokeText(label.words, label.x, label.y);
            pen.fillStyle = this.colour('--ink');
            pen.fillText(label.words, label.x, label.y);
        }
        return bitmapOf(copy);
    }
}

function box(x: number, y: number): Box {
    return { left: x - HALF, top: y - HALF, right: x + HALF, bottom: y + HALF };
}

/** Keeps as many elements as there are labels; places them from script, as the policy allows. */
function write(home: HTMLElement, labels: readonly Label[]): void {
    while (home.childElementCount > labels.length) {
        home.lastElementChild?.remove();
    }
    labels.forEach((label, k) => {
        const element = home.children[k] ?? home.appendChild(document.createElement('span'));
        element.textContent = label.words;
        if (element instanceof HTMLElement) {
            element.style.transform = `translate(${label.box.left}px, ${label.box.top}px)`;
        }
    });
}
