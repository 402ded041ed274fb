import { testsOf, type TestRow } from '../../core/learning';
import type { AnswerDocument } from '../../core/wire';
import { exact } from '../../pictures/TableView';
import { useBay } from '../context';
import { Fold } from '../Fold';
import { OpenTest } from './OpenTest';
import { ReadLog } from './ReadLog';

interface WhyProps {
    document: AnswerDocument;
}

/** Why it did not do what was promised: the tests of the logbook, one of them open. */
export function Why({ document }: WhyProps) {
    const bay = useBay();
    const tests = testsOf(document.answer.sections, document.fields);
    const open = bay.tests.open.value;
    return (
        <div class="learning">
            <section class="logbook" aria-labelledby="logbook">
                <h3 id="logbook">Logbook</h3>
                {tests.length === 0 ? (
                    <p class="quiet">No test is written down beside this rig file yet.</p>
                ) : (
                    <TestTable tests={tests} open={open} />
                )}
                <Fold title="Read in a log">{() => <ReadLog />}</Fold>
            </section>
            {open !== undefined && (
                <OpenTest
                    key={open}
                    test={open}
                    others={tests.map(({ id }) => id).filter(id => id !== open)}
                />
            )}
        </div>
    );
}

function TestTable({ tests, open }: { tests: readonly TestRow[]; open: string | undefined }) {
    const bay = useBay();
    // A column in which nothing stands takes the width from the others.
    const heads = (tests[0]?.told ?? [])
        .map(({ label }) => label)
        .filter(head =>
            tests.some(({ told }) =>
                told.some(({ label, value }) => label === head && value.shown !== ''),
            ),
        );
    return (
        <div class="picture">
            <div class="scroll" tabIndex={0} role="region" aria-label="Tests of the logbook">
                <table class="numbers tests">
                    <caption class="unseen">Tests of the logbook</caption>
                    <thead>
                        <tr>
                            <th scope="col">test</th>
                            {heads.map(head => (
                                <th key={head} scope="col">
                                    {head}
                                </th>
                            ))}
                        </tr>
                    </thead>
                    <tbody>
                        {tests.map(({ id, told }) => (
                            <tr key={id} class={id === open ? 'picked' : undefined}>
                                <th scope="row">
                                    <button
                                        type="button"
                                        class="link"
                                        aria-expanded={id === open}
                                        data-test={id}
                                        onClick={() => {
                                            bay.tests.turn(id);
                                        }}
                                    >
                                        {id}
                                    </button>
                                </th>
                                {told
                                    .filter(({ label }) => heads.includes(label))
                                    .map(({ label, value }) => (
                                        <td
                                            key={label}
                                            class={value.kind === 'amount' ? 'number' : undefined}
                                            {...exact(value)}
                                        >
                                            {value.shown}
                                            {value.shownBand !== '' && (
                                                <span class="band"> ({value.shownBand})</span>
                                            )}
                                        </td>
                                    ))}
                            </tr>
                        ))}
                    </tbody>
                </table>
            </div>
        </div>
    );
}
