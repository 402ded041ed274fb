import { unsentFrom, type Keep, type Unsent } from '../core/unsent';

const NAME = 'liftwright unsent ';

/** What is unsent, in the storage of the browser: a page closed in mid-edit leaves it for the next one. */
export class StoredKeep implements Keep {
    constructor(private readonly storage: Storage | undefined) {}

    put(unsent: Unsent): void {
        try {
            this.storage?.setItem(NAME + unsent.rig, JSON.stringify(unsent));
        } catch {
            // Full or forbidden: then the page alone holds it, as it does anyhow.
        }
    }

    drop(rig: string): void {
        try {
            this.storage?.removeItem(NAME + rig);
        } catch {
            // Forbidden: nothing is there either.
        }
    }

    get(rig: string): Unsent | undefined {
        try {
            const held = this.storage?.getItem(NAME + rig);
            return typeof held === 'string' ? unsentFrom(held) : undefined;
        } catch {
            return undefined;
        }
    }
}
