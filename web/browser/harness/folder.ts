import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const examples = path.resolve(import.meta.dirname, '../../../examples');

/** A folder of its own for one scenario. */
export class Folder {
    readonly path = mkdtempSync(path.join(tmpdir(), 'liftwright-browser-'));

    /** With a copy of an example in it, in the folder itself. */
    static of(example: string): Folder {
        const folder = new Folder();
        cpSync(path.join(examples, example), folder.path, { recursive: true });
        return folder;
    }

    read(name: string): string {
        return readFileSync(path.join(this.path, name), 'utf8');
    }

    has(name: string): boolean {
        return existsSync(path.join(this.path, name));
    }

    write(name: string, text: string): void {
        writeFileSync(path.join(this.path, name), text);
    }

    remove(): void {
        rmSync(this.path, { recursive: true, force: true });
    }
}
