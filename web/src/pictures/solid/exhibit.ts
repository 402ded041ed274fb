import type { Group } from 'three';
import { groupOf } from '../../core/rigLabels';
import { bareName } from '../../core/mounts';
import { corners, type Scene } from '../../core/scene';
import type { Point } from '../../core/space';
import { thingsOf, type Thing } from '../../core/things';
import { jets, linesOfThrust } from './jets';
import { build } from './rig';
import { extentOf, ground, type Colour, type Extent } from './shapes';

/** Words beside one of some places, where there is room. */
export interface Naming {
    readonly words: string;
    readonly at: readonly Point[];
}

/** What stands in space, and what of it can be pointed at. */
export interface Exhibit {
    /** What moves when it is posed. */
    readonly rig: (colour: Colour) => Group;
    /** What stays: the ground, and what stands on it. */
    readonly world: (colour: Colour) => Group;
    readonly extent: Extent;
    readonly things: readonly Thing[];
    /** The most wanted first. */
    readonly names: readonly Naming[];
}

/** Something over an exhibit that changes more often than it: how warm, what is lost, where to. */
export interface Overlay {
    readonly build: (colour: Colour) => Group;
    readonly names: readonly Naming[];
}

/** Names of groups of fans and packs. */
export function groupNames(scene: Scene): Naming[] {
    const groups = new Map<string, Point[]>();
    for (const { id, at } of [...scene.fans, ...scene.parts.filter(each => each.kind === 'pack')]) {
        const name = bareName(groupOf(id));
        groups.set(name, [...(groups.get(name) ?? []), at]);
    }
    return [...groups].map(([words, at]) => ({ words, at }));
}

export interface Shown {
    readonly jets: boolean;
    readonly lines: boolean;
}

/** A rig at lift-off. */
export function rigExhibit(scene: Scene, shown: Shown): Exhibit {
    const extent = extentOf(corners(scene));
    return {
        rig: colour => {
            const all = build(scene, extent, colour);
            if (shown.jets) all.add(jets(scene, colour));
            if (shown.lines) all.add(linesOfThrust(scene, extent, colour));
            return all;
        },
        world: colour => ground(extent, colour),
        extent,
        things: thingsOf(scene),
        names: groupNames(scene),
    };
}
