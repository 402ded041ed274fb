import {
    DoubleSide,
    Group,
    LineDashedMaterial,
    LineSegments,
    Mesh,
    MeshBasicMaterial,
    OctahedronGeometry,
} from 'three';
import { jetCorners, jetShapes, jetStrokes } from '../../core/jets';
import type { Scene } from '../../core/scene';
import { plus } from '../../core/space';
import { between, geometry, solid, type Colour, type Extent } from './shapes';

/** Half of the mark where a jet strikes, m. */
const STRIKE_M = 0.022;

/** Jets as cones, those that strike something with whole lines; a mark where they do. */
export function jets(scene: Scene, colour: Colour): Group {
    const all = new Group();
    const shapes = jetShapes(scene);
    const wash = new MeshBasicMaterial({
        color: colour('--mark-1'),
        side: DoubleSide,
        transparent: true,
        opacity: 0.1,
        depthWrite: false,
    });
    all.add(new Mesh(geometry(shapes.flatMap(jetCorners)), wash));
    for (const struck of [false, true]) {
        const ends = shapes.filter(shape => shape.struck === struck).flatMap(jetStrokes);
        const lines = new LineSegments(
            geometry(ends),
            new LineDashedMaterial({
                color: colour(struck ? '--unmet' : '--quiet'),
                dashSize: struck ? 1 : 0.03,
                gapSize: struck ? 0 : 0.03,
                transparent: true,
                opacity: struck ? 0.9 : 0.6,
            }),
        );
        lines.computeLineDistances();
        all.add(lines);
    }
    const marks = scene.strikes.map(
        ({ at }) => [plus(at, UP, STRIKE_M), plus(at, UP, -STRIKE_M)] as const,
    );
    all.add(between(new OctahedronGeometry(0.5), solid(colour('--unmet')), marks, 2 * STRIKE_M));
    return all;
}

const UP = { forward: 0, right: 0, up: 1 };

/** The line along which each fan pushes, through all of the rig. */
export function linesOfThrust(scene: Scene, extent: Extent, colour: Colour): LineSegments {
    const ends = scene.fans.flatMap(fan => [
        plus(fan.at, fan.push, extent.reach),
        plus(fan.at, fan.push, -extent.reach),
    ]);
    const lines = new LineSegments(
        geometry(ends),
        new LineDashedMaterial({ color: colour('--accent'), dashSize: 0.015, gapSize: 0.03 }),
    );
    lines.computeLineDistances();
    return lines;
}
