import type { AnswerDocument, Drawing, Part, Place, Section, Units } from '../core/wire';

// What the views ask of the pictures, and nothing more. Pictures keep no state of the rig.

/** A part by its id: what is to be shown, in the picture and in the file. */
export type Show = (part: string) => void;

export interface PictureProps {
    section: Section;
    fields: AnswerDocument['fields'];
    units: Units;
    /** What the file saved is to be called, without ending. */
    fileName: string;
    /** The part that is selected, to be marked wherever it occurs. */
    selected?: string | undefined;
    onShow: Show;
}

/** A drag of one part, from its first move to its end. */
export interface Drag {
    part: string;
    to: Place;
    /** 'over': dropped here; 'off': given up, the part is to stand where it stood. */
    phase: 'moving' | 'over' | 'off';
    snap: boolean;
    twin: boolean;
}

export interface RigProps {
    drawing: Drawing;
    fields: AnswerDocument['fields'];
    units: Units;
    fileName: string;
    /** What can be moved, and why not. */
    parts: Part[];
    selected?: string | undefined;
    onShow: Show;
    onDrag: (drag: Drag) => void;
}
