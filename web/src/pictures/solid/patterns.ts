import { CanvasTexture, Color, MeshLambertMaterial, RepeatWrapping } from 'three';
import type { Level } from '../../core/playback';
import type { Colour } from './shapes';

/** Edge of a tile of a pattern, in pixels. */
const TILE = 32;

/** The ground, and the ink of the pattern on it, of each level: as in the flat pictures. */
const LOOK: Readonly<Record<Level, readonly [string, string]>> = {
    cool: ['--line', '--ink'],
    warm: ['--sheet', '--ink'],
    near: ['--untold-wash', '--untold'],
    over: ['--unmet-wash', '--unmet'],
};

/** Colour of rims and wires of a level. */
export function inkOf(level: Level, colour: Colour): string {
    return colour(LOOK[level][1]);
}

/** Plain, dotted, hatched, crossed: so that a level is told without its colour. */
export function patterned(level: Level, colour: Colour, across: number, along = across) {
    const [ground, ink] = LOOK[level];
    const tile = document.createElement('canvas');
    tile.width = TILE;
    tile.height = TILE;
    const pen = tile.getContext('2d');
    if (!pen || level === 'cool') {
        return new MeshLambertMaterial({ color: new Color(colour(ground)), side: 2 });
    }
    pen.fillStyle = colour(ground);
    pen.fillRect(0, 0, TILE, TILE);
    pen.strokeStyle = colour(ink);
    pen.fillStyle = colour(ink);
    pen.lineWidth = 6;
    if (level === 'warm') {
        pen.beginPath();
        pen.arc(TILE / 2, TILE / 2, 6, 0, 2 * Math.PI);
        pen.fill();
    } else {
        stroke(pen, -TILE, 0);
        stroke(pen, 0, 0);
        stroke(pen, TILE, 0);
        if (level === 'over') {
            pen.transform(-1, 0, 0, 1, TILE, 0);
            stroke(pen, -TILE, 0);
            stroke(pen, 0, 0);
            stroke(pen, TILE, 0);
        }
    }
    const map = new CanvasTexture(tile);
    map.wrapS = RepeatWrapping;
    map.wrapT = RepeatWrapping;
    map.repeat.set(across, along);
    return new MeshLambertMaterial({ map, side: 2 });
}

function stroke(pen: CanvasRenderingContext2D, x: number, y: number): void {
    pen.beginPath();
    pen.moveTo(x, y + TILE);
    pen.lineTo(x + TILE, y);
    pen.stroke();
}
