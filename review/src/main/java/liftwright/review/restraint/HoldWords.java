package liftwright.review.restraint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Footprint;
import liftwright.quantity.Measure;
import liftwright.rig.PartId;
import liftwright.rig.Rig;

/** What can give, in words. */
public final class HoldWords {

    /** Fans that are named one by one before the rest is counted. */
    private static final int NAMED = 3;

    private HoldWords() {}

    /** What gives, as a line of a table. */
    public static String name(Ask ask) {
        String over = ask.over().map(edge -> " over its " + edge(edge) + " edge").orElse("");
        return switch (ask.what()) {
            case SLIDES -> "the stand slides";
            case TURNS -> "the stand turns on its feet";
            case TIPS -> "the stand tips" + over;
            case BOLT_PULLED -> "a bolt is pulled";
            case BOLT_SHEARED -> "a bolt is sheared";
            case BOLT_BOTH -> "a bolt, pulled and sheared at once";
            case HEADROOM -> "head room";
            case ANCHOR -> "the anchor";
            case LINE -> "the line";
            case ARREST -> "arrest force";
            case FREE_FALL -> "free fall";
            case CLEARANCE -> "room below a caught fall";
            case LANDING -> "landing after a runaway";
            case DOWN_LINE -> "a down-line";
            case INGESTION -> "a slack line at an open intake";
            case SIDE_REACH -> "reach to the side";
            case GANTRY_TIPS -> "the gantry tips";
            case GANTRY_SLIDES -> "the gantry slides";
        };
    }

    private static String edge(Footprint.Edge edge) {
        return switch (edge) {
            case FRONT -> "front";
            case BACK -> "back";
            case RIGHT -> "right";
            case LEFT -> "left";
        };
    }

    /** What loads it most. */
    public static String under(Rig rig, Ask ask, Optional<String> kill) {
        return switch (ask.what()) {
            case SLIDES, TURNS, TIPS, BOLT_PULLED, BOLT_SHEARED, BOLT_BOTH, INGESTION ->
                    fans(rig, ask.fans());
            case HEADROOM, FREE_FALL, DOWN_LINE -> runaway(kill);
            case ANCHOR, LINE, ARREST, CLEARANCE, LANDING -> runaway(kill) + ", or all thrust lost";
            case SIDE_REACH -> "the whole length of the line";
            case GANTRY_TIPS, GANTRY_SLIDES -> "all fans, pulling to the side";
        };
    }

    private static String runaway(Optional<String> kill) {
        return "a runaway of all fans, "
                + kill.map(id -> "stopped by " + id).orElse("which nothing stops");
    }

    /** Fans by the names of their groups where all of a group are among them. */
    public static String fans(Rig rig, List<Integer> numbers) {
        if (numbers.isEmpty()) {
            return "nothing";
        }
        if (numbers.size() == rig.fans().size() && numbers.size() > 1) {
            return "all " + numbers.size() + " fans";
        }
        Map<String, List<PartId>> groups = new LinkedHashMap<>();
        rig.fans()
                .forEach(
                        fan ->
                                groups.computeIfAbsent(group(fan.id()), _ -> new ArrayList<>())
                                        .add(fan.id()));
        List<PartId> left =
                new ArrayList<>(numbers.stream().map(k -> rig.fans().get(k).id()).toList());
        List<String> words = new ArrayList<>();
        groups.forEach(
                (name, members) -> {
                    if (members.size() > 1 && left.containsAll(members)) {
                        words.add("all of " + name);
                        left.removeAll(members);
                    }
                });
        left.stream().limit(NAMED).map(PartId::text).forEach(words::add);
        String rest = left.size() > NAMED ? " and " + (left.size() - NAMED) + " more" : "";
        return String.join(", ", words) + rest;
    }

    private static String group(PartId id) {
        int dot = id.text().lastIndexOf('.');
        return dot < 0 ? id.text() : id.text().substring(0, dot);
    }

    /** Field of a load. */
    public static String field(Ask.Unit unit) {
        return switch (unit) {
            case FORCE -> "hold-force";
            case MOMENT -> "hold-moment";
            case LENGTH -> "hold-length";
            case SPEED -> "hold-speed";
            case SHARE -> "hold-share";
        };
    }

    private static Measure measure(Ask.Unit unit) {
        return switch (unit) {
            case FORCE -> Measure.THRUST;
            case MOMENT -> Measure.MOMENT;
            case LENGTH -> Measure.LENGTH;
            case SPEED -> Measure.SPEED;
            case SHARE -> Measure.PERCENT;
        };
    }

    /** "2400 N, gives at 960 N, asked to bear 2 times that". */
    public static Sentence told(Ask ask) {
        Measure measure = measure(ask.what().unit());
        Sentence sentence = Sentence.start().then(measure, ask.load());
        if (ask.capacity().isEmpty()) {
            return sentence.then("; what bears it is not declared");
        }
        sentence =
                sentence.then(", where ")
                        .then(measure, ask.capacity().getAsDouble())
                        .then(" is " + limit(ask));
        return ask.factor() > 1
                ? sentence.then("; asked to bear ")
                        .then(Measure.RATIO, ask.factor())
                        .then(" times the load")
                : sentence;
    }

    private static String limit(Ask ask) {
        return switch (ask.what()) {
            case HEADROOM -> "all the room that there is";
            case ARREST, FREE_FALL, LANDING -> "the limit";
            case CLEARANCE -> "all the room below";
            case SIDE_REACH -> "free";
            case INGESTION -> "what reaches an intake";
            case SLIDES,
                    TURNS,
                    TIPS,
                    BOLT_PULLED,
                    BOLT_SHEARED,
                    BOLT_BOTH,
                    ANCHOR,
                    LINE,
                    DOWN_LINE,
                    GANTRY_TIPS,
                    GANTRY_SLIDES ->
                    "what it bears";
        };
    }

    /** The key that would tell what bears it, below {@code restraint}. */
    public static Optional<String> key(Ask.What what) {
        return switch (what) {
            case ANCHOR -> Optional.of("restraint/tether/anchor strength");
            case LINE -> Optional.of("restraint/tether/line strength");
            case DOWN_LINE -> Optional.of("restraint/tether/down-line strength");
            case SLIDES,
                    TURNS,
                    TIPS,
                    BOLT_PULLED,
                    BOLT_SHEARED,
                    BOLT_BOTH,
                    HEADROOM,
                    ARREST,
                    FREE_FALL,
                    CLEARANCE,
                    LANDING,
                    INGESTION,
                    SIDE_REACH,
                    GANTRY_TIPS,
                    GANTRY_SLIDES ->
                    Optional.empty();
        };
    }

    /** Where in the file to look. */
    public static String path(Ask.What what) {
        return switch (what) {
            case SLIDES, TURNS, TIPS, BOLT_PULLED, BOLT_SHEARED, BOLT_BOTH -> "restraint/stand";
            case HEADROOM,
                    ANCHOR,
                    LINE,
                    ARREST,
                    FREE_FALL,
                    CLEARANCE,
                    LANDING,
                    DOWN_LINE,
                    INGESTION,
                    SIDE_REACH,
                    GANTRY_TIPS,
                    GANTRY_SLIDES ->
                    "restraint/tether";
        };
    }

    /** Where its factor or limit comes from. */
    public static Value limitValue(Ask ask) {
        return Value.of(field(ask.what().unit()), ask.capacity().orElse(0) / ask.factor());
    }
}
