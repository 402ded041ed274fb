package liftwright.trials.evidence;

import static liftwright.trials.Topic.BENCH;
import static liftwright.trials.Topic.CONTROL;
import static liftwright.trials.Topic.DEMAND;
import static liftwright.trials.Topic.FAN;
import static liftwright.trials.Topic.HEAT;
import static liftwright.trials.Topic.HOLD;
import static liftwright.trials.Topic.KILL;
import static liftwright.trials.Topic.LIMIT;
import static liftwright.trials.Topic.MASS;
import static liftwright.trials.Topic.PACK;
import static liftwright.trials.Topic.PEOPLE;
import static liftwright.trials.Topic.PLACE;
import static liftwright.trials.Topic.REACTION;
import static liftwright.trials.Topic.SERIAL;
import static liftwright.trials.Topic.SITE;
import static liftwright.trials.Topic.WIRING;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import liftwright.trials.Topic;

/**
 * What the inputs of a rig are about. Of the rules below the one with the longest beginning of a
 * path counts; a path without a rule is about everything, so that what nobody thought of voids too
 * much and never too little.
 */
public final class Topics {

    private static final Set<Topic> ALL = Collections.unmodifiableSet(EnumSet.allOf(Topic.class));

    /** Stands for any id or name. */
    private static final String ANY = "*";

    /** Sections whose next segment names a part that cards may mean. */
    private static final Set<String> PARTS =
            Set.of("fans", "packs", "mounts", "fan types", "cells");

    /** Rules by the first segment of a path. */
    private static final Map<String, List<Rule>> RULES = new HashMap<>();

    static {
        rule("site", SITE);
        rule("demands", DEMAND);
        // Charge that a run must leave: it ends one as a limit does.
        rule("demands/reserve", DEMAND, LIMIT);
        rule("limits", LIMIT);
        rule("rates", LIMIT);
        rule("risk matrix", LIMIT);
        rule("crew", PEOPLE);
        rule("crew/*/reaction", PEOPLE, REACTION);
        rule("restraint", HOLD);
        rule("settings", CONTROL, FAN);
        rule("settings/stand.yaml", BENCH);
        wearer();
        fanTypes();
        fans();
        packs();
        wiring();
        rule("mounts/*", PLACE);
        rule("other parts/*", MASS, PLACE);
        rule("other parts/*/mass", MASS);
        rule("other parts/*/mount", PLACE);
        rule("other parts/*/at", PLACE);
        rule("other parts/*/serial", SERIAL);
        rule("control", CONTROL);
        rule("control/link loss", CONTROL, KILL);
        rule("control/loss time", CONTROL, KILL);
        rule("control/stop", CONTROL, KILL);
        rule("control/radio", CONTROL, KILL);
        rule("control/fed by", CONTROL, KILL);
        rule("tables/benches", FAN);
        rule("tables/cell tests", PACK);
    }

    private record Rule(List<String> begins, Set<Topic> topics) {
        boolean fits(String[] path) {
            if (path.length < begins.size()) {
                return false;
            }
            for (int i = 0; i < begins.size(); i++) {
                if (!begins.get(i).equals(ANY) && !begins.get(i).equals(path[i])) {
                    return false;
                }
            }
            return true;
        }
    }

    private Topics() {}

    private static void wearer() {
        rule("wearer", MASS, PLACE, PEOPLE);
        rule("wearer/left", PLACE);
        rule("wearer/right", PLACE);
        rule("wearer/stance", PLACE);
        rule("wearer/arm steadiness", PLACE, PEOPLE);
        rule("wearer/strength", PEOPLE);
        rule("wearer/reaction", PEOPLE, REACTION);
    }

    private static void fanTypes() {
        // What a type is called FAN for, its heating too: all of it is one thing on a bench.
        for (String part :
                List.of(
                        "ducted",
                        "tip",
                        "hub",
                        "exit area",
                        "data",
                        "performance",
                        "rotor",
                        "intake",
                        "swirl",
                        "scatter",
                        "installation",
                        "lot",
                        "extremes",
                        "drag area")) {
            rule("fan types/*/" + part, FAN);
        }
        rule("fan types/*/mass", MASS);
        rule("fan types/*/motor", FAN, HEAT);
        rule("fan types/*/motor/heating", HEAT);
        rule("fan types/*/motor/heating/magnet fade", FAN, HEAT);
        rule("fan types/*/rotor/mass", FAN, MASS);
        rule("fan types/*/controller", FAN, CONTROL, HEAT);
        rule("fan types/*/controller/mass", MASS);
        rule("fan types/*/controller/cooling", HEAT);
        rule("fan types/*/controller/misbehaviour", CONTROL, FAN);
    }

    private static void fans() {
        rule("fans/*/type", FAN, MASS, HEAT, PLACE, CONTROL);
        rule("fans/*/declared at", FAN, PLACE);
        rule("fans/*/mount", PLACE);
        rule("fans/*/at", PLACE);
        rule("fans/*/blows", PLACE);
        rule("fans/*/leans", PLACE);
        rule("fans/*/seat", PLACE);
        rule("fans/*/spin", FAN, PLACE);
        rule("fans/*/intake", FAN);
        rule("fans/*/installation", FAN);
        rule("fans/*/serial", SERIAL);
        rule("fans/*/except", FAN);
    }

    private static void packs() {
        rule("cells/*", PACK, HEAT);
        rule("cells/*/mass", MASS, PACK, HEAT);
        rule("cells/*/thermal", HEAT, PACK);
        rule("packs/*/declared at", PACK, PLACE, MASS);
        rule("packs/*/cell", PACK, MASS, HEAT);
        rule("packs/*/series", PACK, MASS, HEAT);
        rule("packs/*/parallel", PACK, MASS, HEAT);
        rule("packs/*/extra mass", MASS);
        rule("packs/*/mass", MASS);
        rule("packs/*/interconnect", PACK);
        rule("packs/*/mount", PLACE);
        rule("packs/*/at", PLACE);
        rule("packs/*/box", PLACE, MASS);
        rule("packs/*/charge", PACK);
        rule("packs/*/temperature", PACK, HEAT);
        rule("packs/*/serial", SERIAL);
    }

    private static void wiring() {
        rule("wiring/chains", WIRING, HEAT);
        rule("wiring/contactors", WIRING, KILL, HEAT);
        rule("wiring/kills", KILL);
        rule("wiring/grounds", WIRING, CONTROL, KILL);
        rule("wiring/pre charge", WIRING);
        rule("wiring/discharge", WIRING, KILL);
        // As the file has them, where no question reads them yet.
        rule("wiring/feeds", WIRING, HEAT);
        rule("wiring/links", WIRING, HEAT);
    }

    private static void rule(String begins, Topic... topics) {
        var segments = List.of(begins.split("/", -1));
        RULES.computeIfAbsent(segments.getFirst(), _ -> new java.util.ArrayList<>())
                .add(new Rule(segments, EnumSet.copyOf(Arrays.asList(topics))));
    }

    /** What is known of a path. */
    private record Known(Set<Topic> topics, Set<String> parts) {}

    /** Every card asks it of every path again; what is kept is bounded, and only ever the same. */
    private static final Map<String, Known> FOUND = new ConcurrentHashMap<>();

    private static final int MOST_KEPT = 50_000;

    private static Known known(String path) {
        Known found = FOUND.get(path);
        if (found == null) {
            if (FOUND.size() > MOST_KEPT) {
                FOUND.clear();
            }
            found = new Known(findTopics(path), findParts(path));
            FOUND.put(path, found);
        }
        return found;
    }

    /** What the input at a path is about; every topic where no rule knows it. */
    public static Set<Topic> of(String path) {
        return known(path).topics();
    }

    private static Set<Topic> findTopics(String path) {
        String[] segments = inRig(path).split("/", -1);
        Set<Topic> found = ALL;
        int longest = 0;
        for (Rule rule : RULES.getOrDefault(segments[0], List.of())) {
            if (rule.begins().size() > longest && rule.fits(segments)) {
                longest = rule.begins().size();
                found = rule.topics();
            }
        }
        return Collections.unmodifiableSet(found);
    }

    /** Whether a rule knows the path. */
    static boolean isKnown(String path) {
        String[] segments = inRig(path).split("/", -1);
        return RULES.getOrDefault(segments[0], List.of()).stream().anyMatch(r -> r.fits(segments));
    }

    /**
     * Ids of the parts that an input belongs to: fans, packs, mounts, types, cells, chains. None
     * where it belongs to the rig, to its people or to what holds it, or to a group of which twins
     * are made.
     */
    public static Set<String> parts(String path) {
        return known(path).parts();
    }

    private static Set<String> findParts(String path) {
        boolean corrected = path.startsWith(CorrectionInputs.CORRECTED + "/");
        if (corrected && !CorrectionInputs.part(path).isEmpty()) {
            return Set.of(CorrectionInputs.part(path));
        }
        boolean unread = corrected || path.startsWith(UnreadKeys.DECLARED + "/");
        String[] segments = inRig(path).split("/", -1);
        if (segments.length >= 2 && PARTS.contains(segments[0])) {
            boolean group = !segments[0].equals("fan types") && !segments[0].equals("cells");
            return unread && group ? Set.of() : Set.of(segments[1]);
        }
        if (segments.length >= 3 && path.startsWith("wiring/chains/")) {
            return Set.of(segments[2]);
        }
        if (segments.length >= 3 && path.startsWith("wiring/contactors/")) {
            return Set.of(segments[2]);
        }
        return Set.of();
    }

    private static String inRig(String path) {
        return path.startsWith(UnreadKeys.DECLARED + "/")
                ? path.substring(UnreadKeys.DECLARED.length() + 1)
                : CorrectionInputs.inRig(path);
    }
}
