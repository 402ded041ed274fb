import { expect } from 'vitest';
import { Folder } from './folder';
import { Program } from './program';
import { shoot } from './shots';
import { browser, desk, Visit, type Look } from './visit';

/** The program on a folder of its own, and a page that looks at it. */
export interface Bay {
    folder: Folder;
    program: Program;
    visit: Visit;
}

/**
 * Opens a copy of an example and runs a scenario on it. Whatever the page complains of by the end is a
 * failure, and nothing that was started is left running.
 */
export async function inBay(
    example: string | Folder,
    scenario: (bay: Bay) => Promise<void>,
    look: Look = desk,
): Promise<void> {
    const folder = typeof example === 'string' ? Folder.of(example) : example;
    const bay: Partial<Bay> = { folder };
    try {
        bay.program = await Program.open(folder.path);
        bay.visit = await Visit.of(await browser(), bay.program.link, look);
        const all = bay as Bay;
        await scenario(all);
        expect(all.visit.complaints, 'what the page complained of').toEqual([]);
    } catch (fault) {
        if (bay.visit !== undefined) {
            const name = expect.getState().currentTestName ?? 'unnamed';
            await shoot(bay.visit.page, `failed ${name.replace(/[^\w ]+/g, ' ').slice(0, 80)}`);
        }
        throw fault;
    } finally {
        await bay.visit?.close();
        await bay.program?.stop();
        folder.remove();
    }
}
