import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand } from '../harness/hand';
import { Program } from '../harness/program';
import { shoot } from '../harness/shots';
import { browser, Visit } from '../harness/visit';

test('a broken file opens, says what is wrong and where, and is answered once it is mended', async () => {
    const folder = Folder.of('mudlark');
    const sound = folder.read('rig.yaml');
    folder.write('rig.yaml', sound.replace('tip: 140 mm', 'tip: 140 bananas'));
    await inBay(folder, async ({ visit: { page } }) => {
        const hand = new Hand(page);
        const problems = page.getByRole('region', { name: 'Problems of the rig file' });
        await problems.getByText('1 error').waitFor();
        expect(await problems.innerText()).toContain('140 bananas');
        await shoot(page, 'broken');
        // Asked of nothing that cannot be read: no verdict, and no old one either.
        expect(await hand.verdict.count()).toBe(0);
        await problems.getByRole('button', { name: /^error, line/ }).click();
        await page.keyboard.press('Tab');
        await hand.menu(/Show the file as outline/);
        const field = hand.file.getByLabel('tip', { exact: true });
        if ((await field.count()) === 0) {
            await hand.file.getByText('fan types').click();
            await hand.file.getByText('F140').click();
        }
        await field.fill('140 mm');
        await field.press('Enter');
        await hand.answered();
        expect(await hand.verdict.innerText()).toMatch(/^\s*met/);
        await hand.save();
        expect(folder.read('rig.yaml')).toBe(sound);
    });
});

test('typing that breaks the file greys the verdict and takes nothing away', () =>
    inBay('mudlark', async ({ folder, visit: { page } }) => {
        const before = folder.read('rig.yaml');
        const hand = new Hand(page);
        await hand.answered();
        const was = await hand.verdict.innerText();
        await hand.typeAtEnd('\nnonsense here: [');
        await page
            .getByRole('region', { name: 'Problems of the rig file' })
            .getByText(/error/)
            .first()
            .waitFor();
        await page.locator('.verdict-line.old').waitFor();
        expect(await hand.verdict.innerText()).toBe(was);
        await shoot(page, 'broken-while-typing');
        for (let i = 0; i < 30 && (await page.locator('.verdict-line.old').count()) > 0; i++) {
            await hand.press(/^Undo/);
            await page.waitForTimeout(100);
        }
        await hand.banded();
        expect(folder.read('rig.yaml')).toBe(before);
    }));

test('an edit from outside while a fan is dragged: both are kept', () =>
    inBay('mudlark', async ({ folder, visit }) => {
        const { page } = visit;
        visit.forgive(/409/); // what was on its way when the file changed is refused and asked anew
        const before = folder.read('rig.yaml');
        const hand = new Hand(page);
        await hand.open('balance');
        await hand.nominal();
        const grip = await hand.grab('left.1', 'above');
        await page.mouse.move(grip.x, grip.y + 10);
        folder.write(
            'rig.yaml',
            folder.read('rig.yaml').replace('temperature: 12 °C', 'temperature: 21 °C   # warmer'),
        );
        await page.waitForTimeout(1500);
        await page.mouse.move(grip.x, grip.y + 30);
        await page.mouse.up();
        await hand.answered();
        await hand.save();
        const after = folder.read('rig.yaml');
        expect(after).toContain('temperature: 21 °C   # warmer');
        expect(after.replace('21 °C   # warmer', '12 °C'), 'the drag').not.toBe(before);
    }));

test('an edit from outside takes away what was changed here: both versions are kept', () =>
    inBay('mudlark', async ({ folder, visit }) => {
        const { page } = visit;
        visit.forgive(/409/);
        const hand = new Hand(page);
        await hand.nominal();
        await hand.menu(/Show the file as outline/);
        const hover = hand.file.getByLabel('hover', { exact: true });
        await hover.fill('70 s');
        await hover.press('Enter');
        await page.getByText('not saved to the file yet').waitFor();
        folder.write('rig.yaml', folder.read('rig.yaml').replace('  hover: 60 s\n', ''));
        const choice = page.getByRole('region', { name: /Another program wrote|same lines/ });
        await choice.waitFor();
        await shoot(page, 'conflict');
        expect(await choice.innerText()).toContain('hover: 70 s');
        expect(await choice.innerText()).toContain('thrust to weight');
        await choice.getByRole('button', { name: 'Take yours' }).click();
        await choice.waitFor({ state: 'detached' });
        await hand.save();
        expect(folder.read('rig.yaml')).toContain('hover: 70 s');
    }));

test('two tabs are one document', () =>
    inBay('mudlark', async ({ visit }) => {
        visit.forgive(/409/);
        const hand = new Hand(visit.page);
        await hand.nominal();
        const opened = visit.context.waitForEvent('page');
        await hand.menu('Open another tab');
        const other = new Hand(await opened);
        await other.nominal();
        await other.open('balance');
        await other.banded();
        await other.drag('left.1', 0, 30, 'above');
        await visit.page.getByText('not saved to the file yet').waitFor();
        await hand.open('balance');
        await hand.answered();
        await other.answered();
        expect(await hand.verdict.innerText()).toBe(await other.verdict.innerText());
        await hand.press(/^Undo/);
        await other.page.getByText('saved', { exact: true }).waitFor();
        await hand.drag('left.1', 0, 30, 'above');
        await hand.save();
        await other.page.getByText('saved', { exact: true }).waitFor();
    }));

test('the server is killed in mid-edit and started again: nothing is lost', () =>
    inBay('mudlark', async bay => {
        const { folder, visit } = bay;
        const { page } = visit;
        const hand = new Hand(page);
        await hand.nominal();
        await hand.typeAtEnd('\n# before the fall');
        await page.getByText('not saved to the file yet').waitFor();
        visit.forgive(
            /ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE|Failed to load resource/,
        );
        const { port } = new URL(bay.program.link);
        await bay.program.kill();
        await page.keyboard.type(' and after it');
        await page.getByText('kept in this page').waitFor();
        await shoot(page, 'server-gone');

        bay.program = await Program.open(folder.path, '--port', port);
        visit.forgive(/401|403/);
        const again = page.getByRole('region', { name: 'The server was started again' });
        await again.getByLabel('Link').fill(bay.program.link);
        await again.getByRole('button', { name: 'Enter' }).click();
        await page.getByText('not saved to the file yet').waitFor();
        await hand.save();
        expect(folder.read('rig.yaml')).toContain('# before the fall and after it');
    }));

test('server and page die together: the next ones find what was typed', () =>
    inBay('mudlark', async bay => {
        const { folder, visit } = bay;
        const before = folder.read('rig.yaml');
        const hand = new Hand(visit.page);
        await hand.nominal();
        await hand.typeAtEnd('\n# unsaved');
        await visit.page.getByText('not saved to the file yet').waitFor();
        await bay.program.kill();
        await visit.close();
        expect(folder.read('rig.yaml')).toBe(before);
        bay.program = await Program.open(folder.path);
        bay.visit = await Visit.of(await browser(), bay.program.link);
        await bay.visit.page.getByText('not saved to the file yet').waitFor();
        await shoot(bay.visit.page, 'recovered');
        await new Hand(bay.visit.page).save();
        expect(folder.read('rig.yaml')).toContain('# unsaved');
    }));
