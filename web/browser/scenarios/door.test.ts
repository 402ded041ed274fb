import { expect, test } from 'vitest';
import { axeFindings } from '../checks/axe';
import { faintTexts } from '../checks/contrast';
import { walkByTab } from '../checks/focus';
import { cutTexts, overlappingTexts } from '../checks/layout';
import { inBay } from '../harness/bay';
import { shoot } from '../harness/shots';
import { browser, Visit } from '../harness/visit';

test('the link lets one page in, once, and leaves no token behind', () =>
    inBay('mudlark', async ({ program, visit }) => {
        await visit.page.getByRole('heading', { level: 1 }).waitFor();
        await visit.page.waitForFunction(() => location.hash === '');
        expect(visit.page.url()).not.toContain('enter=');
        expect(await visit.page.evaluate(() => history.length)).toBeLessThanOrEqual(2);

        const second = await Visit.of(await browser(), program.link);
        second.forgive(/40[13]|Failed to load resource/);
        await second.page.getByRole('heading', { name: 'The door is shut' }).waitFor();
        expect(await axeFindings(second.page)).toEqual([]);
        expect(await faintTexts(second.page)).toEqual([]);
        expect(await overlappingTexts(second.page)).toEqual([]);
        expect(await cutTexts(second.page)).toEqual([]);
        expect((await walkByTab(second.page)).faults).toEqual([]);
        await shoot(second.page, 'door-shut');
        expect(second.complaints).toEqual([]);
        await second.close();
    }));

test('a script or a style from elsewhere is barred by the page’s own policy', () =>
    inBay('mudlark', async ({ visit }) => {
        visit.forgive(/Content Security Policy|violates/);
        const ran = await visit.page.evaluate(async () => {
            const script = document.createElement('script');
            script.textContent = 'globalThis.intruder = 1';
            document.body.append(script);
            const link = document.createElement('style');
            link.textContent = 'body { outline: 9px solid red }';
            document.body.append(link);
            await new Promise(resolve => setTimeout(resolve, 100));
            return ['intruder' in globalThis, getComputedStyle(document.body).outlineWidth];
        });
        expect(ran).not.toContain(true);
        expect(ran).not.toContain('9px');
    }));
