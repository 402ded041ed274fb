import { useState } from 'preact/hooks';
import { useBay } from '../context';

/** Which other test is laid over this one, and by how much later its clock begins. */
export function Beside({ others }: { others: readonly string[] }) {
    const bay = useBay();
    const chosen = bay.tests.beside.value;
    const [shift, setShift] = useState('0');
    const read = Number(shift.replace(',', '.').replace('−', '-'));
    const wrong = shift.trim() === '' || !Number.isFinite(read);
    return (
        <div class="row beside" role="group" aria-label="Another test over this one">
            <label class="pick">
                <span>Lay over it</span>
                <select
                    value={chosen ?? ''}
                    onChange={event => {
                        const { value } = event.currentTarget;
                        setShift('0');
                        bay.tests.compare(others.find(each => each === value));
                    }}
                >
                    <option value="">no other test</option>
                    {others.map(each => (
                        <option key={each} value={each}>
                            {each}
                        </option>
                    ))}
                </select>
            </label>
            {chosen !== undefined && (
                <label class="pick">
                    <span>begun later by, s</span>
                    <input
                        type="text"
                        inputMode="decimal"
                        size={6}
                        value={shift}
                        aria-invalid={wrong}
                        onInput={event => {
                            const { value } = event.currentTarget;
                            setShift(value);
                            const next = Number(value.replace(',', '.').replace('−', '-'));
                            if (value.trim() !== '' && Number.isFinite(next)) {
                                bay.tests.shiftS.value = next;
                            }
                        }}
                    />
                </label>
            )}
        </div>
    );
}
