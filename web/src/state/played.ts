import { signal } from '@preact/signals';
import type { AnswerDocument, FlightPath, FlownTold } from '../core/wire';
import type { Where } from './cards';
import type { Server } from './server';
import { nextTurn } from './turn';

/** One flight, by what decides every bit of it. */
export interface FlightName {
    profile?: string | undefined;
    number: number;
    seed: string;
}

/** A flight that is flown again, to be read and played. */
export interface Flown extends FlightName {
    state: 'flying' | 'flown' | 'refused';
    /** The state of the rig that was flown. */
    of: string;
    document?: AnswerDocument;
    path?: FlightPath;
    refused?: string;
}

/** The flight that is looked at, and the moment of it. */
export class Played {
    readonly flown = signal<Flown | undefined>(undefined);
    /** On the clock of the flight, s; undefined before one is chosen. */
    readonly at = signal<number | undefined>(undefined);
    private running: AbortController | undefined;

    constructor(
        private readonly server: Server,
        private readonly where: () => Where | undefined,
    ) {}

    close(): void {
        this.running?.abort();
        this.running = undefined;
        this.flown.value = undefined;
        this.at.value = undefined;
    }

    async fly(name: FlightName): Promise<void> {
        const where = this.where();
        if (where === undefined) return;
        this.close();
        const running = new AbortController();
        this.running = running;
        const { rig, revision, units } = where;
        this.flown.value = { ...name, of: revision, state: 'flying' };
        const end = await this.server.stream(
            '/api/flown',
            {
                rig,
                base: revision,
                units,
                number: name.number,
                seed: name.seed,
                turn: nextTurn(),
                ...(name.profile === undefined ? {} : { profile: name.profile }),
            },
            running.signal,
            line => {
                if (this.running === running) this.told(line as FlownTold);
            },
        );
        if (this.running !== running) return;
        this.running = undefined;
        const flown = this.flown.peek();
        if (flown === undefined || flown.state === 'refused') return;
        if (end.kind === 'ended' && flown.document !== undefined) {
            this.flown.value = { ...flown, state: 'flown' };
            return;
        }
        const refused = end.kind === 'fault' ? end.fault.sentence : 'The server does not answer.';
        this.flown.value = { ...flown, state: 'refused', refused };
    }

    private told(line: FlownTold): void {
        const flown = this.flown.peek();
        if (flown === undefined) return;
        if ('path' in line) this.flown.value = { ...flown, path: line.path };
        else if ('document' in line) this.flown.value = { ...flown, document: line.document };
        else if ('refused' in line) {
            this.flown.value = { ...flown, state: 'refused', refused: line.refused };
        }
    }
}
