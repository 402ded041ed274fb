import { expect, test } from 'vitest';
import { Latest } from '../../src/core/latest';

function held(): { promise: Promise<void>; done: () => void; fail: () => void } {
    const { promise, resolve, reject } = (() => {
        let resolve!: () => void;
        let reject!: (fault: Error) => void;
        const promise = new Promise<void>((yes, no) => {
            resolve = yes;
            reject = no;
        });
        return { promise, resolve, reject };
    })();
    return {
        promise,
        done: resolve,
        fail: () => {
            reject(new Error('lost'));
        },
    };
}

test('one at a time, the newest next', async () => {
    const dealt: number[] = [];
    const works = [held(), held(), held()];
    const latest = new Latest<number>(value => {
        dealt.push(value);
        return works[dealt.length - 1]?.promise;
    });
    [1, 2, 3, 4].forEach(value => {
        latest.offer(value);
    });
    expect(dealt).toEqual([1]);
    works[0]?.done();
    await Promise.resolve().then(() => undefined);
    expect(dealt).toEqual([1, 4]);
    latest.offer(5);
    latest.drop();
    works[1]?.done();
    await Promise.resolve().then(() => undefined);
    expect(dealt).toEqual([1, 4]);
    latest.offer(6);
    expect(dealt).toEqual([1, 4, 6]);
});

test('a failure lets the next one through', async () => {
    const dealt: number[] = [];
    const work = held();
    const latest = new Latest<number>(value => {
        dealt.push(value);
        return value === 1 ? work.promise : undefined;
    });
    latest.offer(1);
    latest.offer(2);
    work.fail();
    await Promise.resolve().then(() => undefined);
    expect(dealt).toEqual([1, 2]);
    latest.offer(3);
    expect(dealt).toEqual([1, 2, 3]);
});
