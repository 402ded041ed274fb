import { useEffect, useState } from 'preact/hooks';
import type { Guide, GuideField, RigDocument } from '../core/wire';
import { clock } from '../state/bay';
import { useBay } from './context';

const PAUSE_MS = 250;

/** A rig from nothing: what has to be known, in the order in which a builder comes to know it. */
export function GuideSheet() {
    const bay = useBay();
    const [answers, setAnswers] = useState<Record<string, string>>({});
    const [guide, setGuide] = useState<Guide | undefined>();
    const [name, setName] = useState('rig.yaml');
    const [fault, setFault] = useState('');
    useEffect(() => {
        let wanted = true;
        const cancel = clock.after(guide === undefined ? 0 : PAUSE_MS, () => {
            void bay.server.call<Guide>('/api/guide', { answers }).then(reply => {
                if (!wanted) return;
                if (reply.kind === 'done') setGuide(reply.value);
                else setFault(reply.kind === 'fault' ? reply.fault.sentence : SILENT);
            });
        });
        return () => {
            wanted = false;
            cancel();
        };
        // The guide itself is no reason to ask for the guide.
    }, [answers, bay]);
    const begin = async () => {
        const reply = await bay.server.call<RigDocument>('/api/begin', { name, answers });
        if (reply.kind === 'done') {
            bay.lay(reply.value);
            void bay.list();
            document.getElementById('sheet')?.focus();
            window.scrollTo(0, 0);
        } else {
            setFault(reply.kind === 'fault' ? reply.fault.sentence : SILENT);
        }
    };
    const open = guide?.steps.flatMap(step => step.fields).filter(field => field.problem) ?? [];
    return (
        <article class="guide">
            <h2>A rig from nothing</h2>
            <p>
                Answer what you know. What stands in a field already is a beginning, not advice:
                change it to what you have. Nothing is written before you make the rig, and every
                value can be changed later.
            </p>
            {guide?.steps.map(step => (
                <fieldset key={step.id}>
                    <legend>{step.title}</legend>
                    <p class="quiet">{step.why}</p>
                    {step.fields.map(field => (
                        <Field
                            key={field.key}
                            field={field}
                            value={answers[field.key] ?? field.value}
                            change={value => {
                                setAnswers({ ...answers, [field.key]: value });
                            }}
                        />
                    ))}
                </fieldset>
            ))}
            {guide === undefined && <p class="quiet">{fault === '' ? 'One moment.' : ''}</p>}
            {guide?.text !== undefined && (
                <details class="fold">
                    <summary>The file this makes</summary>
                    <pre tabIndex={0}>{guide.text}</pre>
                </details>
            )}
            {guide !== undefined && (
                <div class="row finish">
                    <label>
                        Name of the file{' '}
                        <input
                            type="text"
                            value={name}
                            onInput={event => {
                                setName(event.currentTarget.value);
                            }}
                        />
                    </label>
                    <button
                        type="button"
                        class="strong"
                        aria-disabled={guide.text === undefined}
                        onClick={() => {
                            if (guide.text !== undefined) void begin();
                        }}
                    >
                        Make this rig
                    </button>
                </div>
            )}
            <p role="status" class="is-unmet">
                {fault}
                {open.length > 0 && `Still open: ${open.map(field => field.label).join(', ')}.`}
            </p>
        </article>
    );
}

const SILENT = 'The server does not answer: is liftwright open still running?';

interface FieldProps {
    field: GuideField;
    value: string;
    change: (value: string) => void;
}

function Field({ field, value, change }: FieldProps) {
    const helpId = `help-${field.key.replace(/\W/g, '-')}`;
    return (
        <div class="field">
            <label>
                <span>{field.label}</span>
                {field.kind === 'choice' ? (
                    <select
                        value={value}
                        aria-describedby={helpId}
                        onChange={event => {
                            change(event.currentTarget.value);
                        }}
                    >
                        {field.choices?.map(choice => (
                            <option key={choice.value} value={choice.value}>
                                {choice.label}
                            </option>
                        ))}
                    </select>
                ) : (
                    <input
                        type="text"
                        inputMode={field.kind === 'count' ? 'numeric' : 'text'}
                        value={value}
                        aria-describedby={helpId}
                        aria-invalid={field.problem !== undefined}
                        onInput={event => {
                            change(event.currentTarget.value);
                        }}
                    />
                )}
            </label>
            <p id={helpId} class="quiet">
                {field.problem !== undefined && <strong class="is-unmet">{field.problem} </strong>}
                {field.help}
            </p>
        </div>
    );
}
