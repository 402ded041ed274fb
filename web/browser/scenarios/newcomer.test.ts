import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

/** What a reader wrote for readers: it must outlive every change. */
function comments(text: string): string[] {
    return text
        .split('\n')
        .map(line => /(?:^|\s)#.*$/.exec(line)?.[0].trim() ?? '')
        .filter(comment => comment !== '');
}

test('a newcomer opens the demo, drags a fan, sees it turn, and finds it in the file', () =>
    inBay('mudlark', async ({ folder, visit: { page } }) => {
        const before = folder.read('rig.yaml');
        const hand = new Hand(page);
        await hand.answered();
        expect(await hand.verdict.innerText()).toMatch(/^\s*met/);

        await hand.open('balance');
        await hand.answered();
        const yaw = page.locator('[data-field=yaw-moment]').last();
        const yawBefore = await yaw.getAttribute('data-si');
        await hand.sheet.getByLabel('twin goes along').uncheck();
        await hand.drag('left.1', 0, 40, 'above');
        await hand.changed();
        await shoot(page, 'dragged');
        expect(await yaw.getAttribute('data-si')).not.toBe(yawBefore);
        expect(folder.read('rig.yaml'), 'nothing is written before it is saved').toBe(before);

        await hand.save();
        const after = folder.read('rig.yaml');
        expect(after).not.toBe(before);
        expect(comments(after)).toEqual(comments(before));
        await hand.press(/^Undo/);
        await hand.save();
        expect(folder.read('rig.yaml')).toBe(before);
    }));

test('a rig that is short: a remedy is tried, kept, and stands in the file with every comment', () =>
    inBay('sandpiper', async ({ folder, visit: { page } }) => {
        const before = folder.read('rig.yaml');
        const hand = new Hand(page);
        await hand.open('lift');
        await hand.answered();
        expect(await hand.verdict.innerText()).toMatch(/^\s*not met/);
        const first = page.getByRole('button', { name: /^Try this/ }).first();
        await first.click();
        const trial = page.getByRole('region', { name: 'Tried, not kept' });
        await trial.getByText('With it:').waitFor();
        await shoot(page, 'tried');
        expect(folder.read('rig.yaml')).toBe(before);
        await trial.getByRole('button', { name: 'Keep' }).click();
        await hand.changed();
        expect(await hand.verdict.innerText()).toMatch(/^\s*met/);
        await hand.save();
        const after = folder.read('rig.yaml');
        expect(after).not.toBe(before);
        expect(comments(after)).toEqual(comments(before));
        expect(comments(before).length).toBeGreaterThan(1);
    }));

test('what a finding speaks of is shown on the rig and in the file', () =>
    inBay('sandpiper', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.open('lift');
        await hand.answered();
        await hand.press(/^Show me/);
        await hand.file.locator('.cm-shown').first().waitFor();
    }));
