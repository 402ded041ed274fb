import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

test('from an empty folder a rig of twelve fans of one’s own, in at most sixty actions', () =>
    inBay(new Folder(), async ({ folder, visit: { page } }) => {
        const hand = new Hand(page);
        await page.getByRole('heading', { name: 'A rig from nothing' }).waitFor();
        await page.getByRole('button', { name: 'Make this rig' }).waitFor();
        await shoot(page, 'guide');
        const own: [string, string][] = [
            ['Name of the rig', 'Twelve of mine'],
            ['Mass of the wearer', '68 kg ± 0.5 kg'],
            ['Stature', '1.71 m'],
            ['Lift over weight', '1.2'],
            ['Time in the air', '90 s'],
            ['Diameter over the blades', '195 mm'],
            ['Mass of one fan', '1.3 kg ± 2 %'],
            ['A speed at which it was measured', '19000 rpm'],
            ['Thrust at that speed', '165 N ± 3 %'],
            ['Shaft power at that speed', '8.2 kW ± 4 %'],
            ['Rows behind the back', '1'],
            ['Rows on each forearm', '1'],
            ['From fan to fan', '220 mm'],
            ['Capacity of one cell', '10 Ah ± 2 % each'],
            ['How many packs', '12'],
            ['Speed constant of the motor', '400 rpm/V ± 2 %'],
        ];
        for (const [label, value] of own) {
            await hand.fill(label, value, hand.sheet);
        }
        for (const row of [0, 1]) {
            await hand.sheet.getByLabel('Fans in each of them').nth(row).fill('4');
            hand.actions++;
        }
        await hand.fill('Name of the file', 'mine.yaml');
        await page.getByText('The file this makes').waitFor();
        await shoot(page, 'guide-filled');
        await hand.press('Make this rig');
        await hand.banded();
        await hand.open('balance');
        await hand.nominal();
        const fans = hand.view('behind').getByRole('button', { name: /, fan,/ });
        expect(await fans.count()).toBe(12);
        await shoot(page, 'from-nothing');
        expect(hand.actions).toBeLessThanOrEqual(60);
        const made = folder.read('mine.yaml');
        expect(made).toContain('Twelve of mine');
        expect(made).toContain('165 N ± 3 %');
        expect(made).toContain('liftwright: 1');
    }));
