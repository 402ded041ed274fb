import { signal } from '@preact/signals';
import type { Moved, Place, Units } from '../core/wire';
import type { Server } from './server';
import type { Trial } from './trial';

interface Where {
    rig: string;
    revision: string;
    units: Units;
}

interface Drag {
    part: string;
    to: Place;
    phase: 'moving' | 'over' | 'off';
    snap: boolean;
    twin: boolean;
    whole?: boolean;
}

/** A part under the hand: where it may stand, what the questions say of it, and at its drop the change. */
export class Moving {
    readonly moved = signal<Moved | undefined>(undefined);
    private turn = 0;

    constructor(
        private readonly server: Server,
        private readonly trial: Trial,
        private readonly where: () => Where | undefined,
        private readonly change: (moved: Moved, label: string) => void,
        private readonly tell: (sentence: string) => void,
    ) {}

    async drag(drag: Drag): Promise<void> {
        const turn = ++this.turn;
        const where = this.where();
        if (drag.phase === 'off' || where === undefined) {
            this.settle();
            return;
        }
        const reply = await this.server.call<Moved>('/api/move', {
            rig: where.rig,
            base: where.revision,
            part: drag.part,
            to: drag.to,
            snap: drag.snap,
            twin: drag.twin,
            ...(drag.whole === true ? { whole: true } : {}),
        });
        if (turn !== this.turn) return;
        if (reply.kind !== 'done') {
            if (reply.kind === 'fault') this.tell(reply.fault.sentence);
            if (drag.phase === 'over') this.settle();
            return;
        }
        this.moved.value = reply.value;
        const label = `move ${drag.part}`;
        if (drag.phase === 'over') {
            if (reply.value.changes.length > 0) this.change(reply.value, label);
            this.settle();
            return;
        }
        const { rig, revision, units } = where;
        await this.trial.start(rig, revision, units, label, reply.value.changes, true);
    }

    private settle(): void {
        this.moved.value = undefined;
        this.trial.let();
    }
}
