package liftwright.trials.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.HeldCorrections;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.CorrectionWords;
import liftwright.review.Settings;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.TestCard;
import liftwright.trials.TrialsAnswer;
import liftwright.trials.day.Day;
import liftwright.trials.day.TodaysPlan;
import liftwright.trials.day.TodaysSheet;
import liftwright.trials.evidence.Gate;
import liftwright.trials.evidence.Inputs;
import liftwright.trials.evidence.KillsToday;
import liftwright.trials.evidence.Reproof;
import liftwright.trials.evidence.Standing;
import liftwright.trials.predict.Predictions;
import liftwright.trials.programme.Missing;
import liftwright.trials.programme.Programme;
import liftwright.trials.proof.Heights;
import liftwright.trials.proof.KillProof;
import liftwright.trials.proof.PathProof;
import liftwright.trials.proof.ProofPath;
import liftwright.trials.proof.ProofSections;

/**
 * "How do I test it without hurting anyone?": the programme of a rig with what is proved of it, and
 * each card with all that was computed for it. For one thread.
 */
public final class Trials {

    private final TrialsCase about;
    private final Settings settings;
    private final Programme programme;
    private final Inputs inputs;
    private final Standing standing;
    private final Gate.Conditions conditions;
    private final Map<CardId, CardStanding> looked = new HashMap<>();

    /**
     * @param about the rig and what is on record
     * @param settings seed and threads
     * @param review answers a question by its name, each at most once, and only where nothing
     *     cheaper keeps a card closed; {@link NotAsked} where the review is left out
     */
    public Trials(TrialsCase about, Settings settings, Function<String, Answer> review) {
        this.about = about;
        this.settings = settings;
        programme = Programme.of(about.rig());
        inputs = Inputs.of(about.rig(), about.settings());
        standing = Standing.of(programme.cards(), about.passes(), inputs, about.today());
        Map<String, Answer> answered = new HashMap<>();
        conditions =
                new Gate.Conditions(
                        this::undeclared,
                        kills(),
                        about.unread(),
                        question -> answered.computeIfAbsent(question, review));
    }

    /** The cards that this rig has. */
    public Programme programme() {
        return programme;
    }

    /** What the cards are worth today. */
    public Standing standing() {
        return standing;
    }

    /** Inputs of the rig as it is, on which a pass of today would rest. */
    public Inputs inputs() {
        return inputs;
    }

    /** Whether a card may be done today. */
    public Gate gate(Planned card) {
        return look(card).gate();
    }

    private List<String> undeclared(Planned card) {
        return Missing.of(about.rig(), card).stream().map(Missing::words).toList();
    }

    private KillsToday kills() {
        Set<String> declared =
                ProofPath.of(about.rig()).stream().map(ProofPath::name).collect(Collectors.toSet());
        return about.proof()
                .map(
                        proof ->
                                new KillsToday(
                                        declared,
                                        proof.stands(about.today(), about.rigDigest())
                                                ? proof.paths().stream()
                                                        .filter(
                                                                path ->
                                                                        path.outcome()
                                                                                == Outcome.HOLDS)
                                                        .map(PathProof::path)
                                                        .collect(Collectors.toSet())
                                                : new HashSet<>(),
                                        proof.doubts(about.today(), about.rigDigest())))
                .orElseGet(() -> KillsToday.unproved(declared));
    }

    private CardStanding look(Planned card) {
        CardStanding known = looked.get(card.id());
        if (known == null) {
            known =
                    new CardStanding(
                            card, standing.of(card.id()), Gate.of(card, standing, conditions));
            looked.put(card.id(), known);
        }
        return known;
    }

    private List<CardStanding> all() {
        return programme.cards().stream().map(this::look).toList();
    }

    /**
     * The programme: what stands, what is open, what keeps the others closed.
     *
     * @param goal the card that shall open; empty for the last one
     */
    public TrialsAnswer programme(Optional<CardId> goal) {
        List<CardStanding> cards = all();
        List<Section> sections = new ArrayList<>();
        sections.add(ProgrammeTables.programme(cards));
        ProgrammeTables.voided(cards).ifPresent(sections::add);
        CardId aim = goal.orElseGet(() -> programme.cards().getLast().id());
        Optional<Reproof> cheapest = Reproof.cheapest(programme.cards(), standing, aim);
        cheapest.ifPresent(way -> sections.add(ProgrammeTables.reproof(cards, aim, way)));
        boolean reached =
                goal.map(id -> look(card(id)).isOpen() || look(card(id)).isPassed())
                        .orElseGet(() -> cards.stream().allMatch(CardStanding::isPassed));
        return answer(
                new Verdict(
                        reached ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                        sentence(cards, aim, cheapest),
                        Optional.empty(),
                        List.of()),
                about.unread().stream().map(TrialsFindings::unread).toList(),
                sections,
                0);
    }

    private static Sentence sentence(
            List<CardStanding> cards, CardId aim, Optional<Reproof> cheapest) {
        long passed = cards.stream().filter(CardStanding::isPassed).count();
        String counted =
                passed == 0
                        ? "none of " + cards.size() + " cards is proved today"
                        : passed
                                + " of "
                                + cards.size()
                                + (passed == 1 ? " cards is" : " cards are")
                                + " proved today";
        List<String> open =
                cards.stream()
                        .filter(card -> card.isOpen() && !card.isPassed())
                        .map(card -> card.planned().id().text())
                        .toList();
        String next =
                open.isEmpty()
                        ? "; none is open"
                        : "; open: "
                                + String.join(", ", open.subList(0, Math.min(3, open.size())))
                                + (open.size() > 3 ? " and " + (open.size() - 3) + " more" : "");
        Sentence told = Sentence.words(counted + next);
        return cheapest.filter(way -> !way.order().isEmpty())
                .map(
                        way ->
                                told.then("; before " + aim.text() + " come ")
                                        .then(Measure.COUNT, way.order().size())
                                        .then(" cards of ")
                                        .then(Measure.COUNT, Math.ceil(way.minutes() / 60))
                                        .then(" hours"))
                .orElse(told);
    }

    private Planned card(CardId id) {
        return programme
                .card(id)
                .orElseThrow(() -> new IllegalArgumentException("this rig has no card " + id));
    }

    /**
     * Cards to be printed.
     *
     * @param ids of cards of the programme, at least one
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped
     * @throws IllegalArgumentException where this rig has no such card
     * @throws liftwright.plant.parameters.ImpossibleValueException if a declared value is none that
     *     can be
     */
    public Optional<TrialsAnswer> cards(List<CardId> ids, Work work) {
        var maker = new CardMaker(about, settings);
        Map<CardStanding, TestCard> made = new LinkedHashMap<>();
        int draws = 0;
        for (CardId id : ids) {
            CardStanding card = look(card(id));
            Optional<CardMaker.Made> one = maker.make(card, work);
            if (one.isEmpty() || work.stopped()) {
                return Optional.empty();
            }
            made.put(card, one.get().card());
            draws = Math.max(draws, one.get().draws());
        }
        List<Finding> findings = new ArrayList<>();
        made.forEach((card, test) -> findings.addAll(TrialsFindings.of(card, test)));
        findings.sort(java.util.Comparator.comparing(Finding::severity));
        return Optional.of(
                answer(
                        verdict(List.copyOf(made.keySet())),
                        findings,
                        made.entrySet().stream()
                                .<Section>map(e -> CardMaker.section(e.getKey(), e.getValue()))
                                .toList(),
                        draws));
    }

    /**
     * What may be done on a day, in which order, and one sheet of it to print.
     *
     * @param day as it was found; its date is the day of this case
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped
     */
    public Optional<TrialsAnswer> today(Day day, Work work) {
        return new DayOfTrials(about, settings, programme, standing, conditions.answers(), day)
                .plan(work)
                .map(
                        plan ->
                                answer(
                                        verdict(plan),
                                        about.unread().stream()
                                                .map(TrialsFindings::unread)
                                                .toList(),
                                        List.of(
                                                TodaysSheet.of(plan, heights()),
                                                TodaysSheet.table(plan)),
                                        Predictions.DRAWS));
    }

    private static Verdict verdict(TodaysPlan plan) {
        int allowed = plan.allowed().size();
        return new Verdict(
                allowed > 0 ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(
                        (allowed == 0
                                        ? "no card is allowed"
                                        : allowed == 1
                                                ? "1 card is allowed"
                                                : allowed + " cards are allowed")
                                + " on "
                                + plan.day().date()
                                + " of "
                                + (allowed + plan.refused().size())),
                Optional.empty(),
                List.of());
    }

    /** Heights that the measured kills allow, where a proof stands. */
    private Optional<Heights> heights() {
        return about.proof()
                .filter(proof -> proof.stands(about.today(), about.rigDigest()))
                .map(proof -> Heights.of(Plant.assemble(about.rig()), proof));
    }

    /**
     * What a log of the kills proves, and what follows from it.
     *
     * @param proof of this rig
     */
    public TrialsAnswer proof(KillProof proof) {
        Heights heights = Heights.of(Plant.assemble(about.rig()), proof);
        return answer(
                new Verdict(
                        proof.outcome(),
                        ProofSections.sentence(proof),
                        Optional.empty(),
                        List.of()),
                ProofSections.findings(about.rig(), proof, heights),
                List.of(ProofSections.times(proof), ProofSections.heights(heights)),
                0);
    }

    private static Verdict verdict(List<CardStanding> cards) {
        List<String> closed =
                cards.stream()
                        .filter(card -> !card.isOpen())
                        .map(card -> card.planned().id().text())
                        .toList();
        String whole = cards.size() == 1 ? cards.getFirst().planned().id().text() : "all cards";
        return new Verdict(
                closed.isEmpty() ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(
                        closed.isEmpty()
                                ? whole + ": nothing computed or recorded keeps it closed today"
                                : closed.size()
                                        + " of "
                                        + cards.size()
                                        + " closed today: "
                                        + String.join(", ", closed)),
                Optional.empty(),
                List.of());
    }

    private TrialsAnswer answer(
            Verdict verdict, List<Finding> findings, List<Section> sections, int draws) {
        HeldCorrections corrections = HeldCorrections.of(about.rig());
        Evidence evidence = TrialsEvidence.of(about, corrections, settings, draws);
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(CorrectionWords.findings(about.rig(), corrections));
        all.sort(java.util.Comparator.comparing(Finding::severity));
        return new TrialsAnswer(
                liftwright.answer.Checks.downgrade(verdict, evidence), all, sections, evidence);
    }
}
