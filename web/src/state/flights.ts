import { signal } from '@preact/signals';
import type { Profiles } from '../core/wire';
import type { Server } from './server';

/** The profiles beside the rig, and the one that is flown. */
export class Flights {
    readonly profiles = signal<readonly string[]>([]);
    /** Undefined for the first one, or the usual one where there is none. */
    readonly chosen = signal<string | undefined>(undefined);

    constructor(
        private readonly server: Server,
        /** Another profile is flown now. */
        private readonly turned: () => void,
    ) {}

    /** What can be flown with a rig; another rig has other profiles. */
    async list(rig: string): Promise<void> {
        this.profiles.value = [];
        this.chosen.value = undefined;
        const reply = await this.server.call<Profiles>('/api/profiles', { rig });
        if (reply.kind === 'done') this.profiles.value = reply.value.profiles;
    }

    choose(profile: string): void {
        if ((this.chosen.value ?? this.profiles.value[0]) === profile) return;
        this.chosen.value = profile;
        this.turned();
    }
}
