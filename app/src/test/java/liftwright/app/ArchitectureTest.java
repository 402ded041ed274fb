package liftwright.app;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.onlyDependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What module declarations would have said of the rooms, and what they could not (ARCHITECTURE.md).
 */
class ArchitectureTest {

    /** Each room and the rooms it names; it may also use what those use. Ground floor first. */
    private static final Map<String, Set<String>> USES =
            Map.ofEntries(
                    entry("quantity", Set.of()),
                    entry("numerics", Set.of()),
                    entry("physics", Set.of()),
                    entry("rig", Set.of("quantity")),
                    entry("answer", Set.of("rig")),
                    entry("plant", Set.of("physics", "rig", "answer", "numerics")),
                    entry("review", Set.of("plant")),
                    entry("trials", Set.of("review")),
                    entry("logbook", Set.of("trials")),
                    entry("learning", Set.of("trials")),
                    entry("flight", Set.of("review")),
                    entry("report", Set.of("answer")),
                    entry("app", Set.of("logbook", "learning", "flight", "report")));

    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .withImportOption(place -> !place.contains("testkit"))
                    // Where a room is packed, other rooms see its tests as an archive.
                    .withImportOption(place -> !place.contains("-tests.jar"))
                    .importPackages("liftwright");

    static Stream<String> rooms() {
        return USES.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void theClassesOfEveryRoomWereFound(String room) {
        assertThat(HOUSE.stream().filter(c -> in(room).test(c))).isNotEmpty();
    }

    @Test
    void everyClassIsInARoomOfTheTable() {
        assertThat(HOUSE.size()).as("classes found").isGreaterThan(30);
        assertThat(HOUSE.stream().map(ArchitectureTest::roomOf).distinct())
                .containsExactlyInAnyOrderElementsOf(USES.keySet());
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void noRoomCallsUpstairs(String room) {
        var allowed = new HashSet<String>();
        allowed.add(room);
        downstairs(room, allowed);
        var upstairs = USES.keySet().stream().filter(r -> !allowed.contains(r)).toList();
        if (upstairs.isEmpty()) {
            assertThat(room).isEqualTo("app");
            return;
        }
        noClasses()
                .that(in(room))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(
                                upstairs.stream()
                                        .map(r -> "liftwright." + r + "..")
                                        .toArray(String[]::new)))
                .check(HOUSE);
    }

    @Test
    void packagesFormNoCycles() {
        slices().matching("liftwright.(*)..").should().beFreeOfCycles().check(HOUSE);
        slices().matching("liftwright.(**)").should().beFreeOfCycles().check(HOUSE);
    }

    /**
     * The laws and the questions know no file, no network and no library: they can be proved alone.
     */
    @Test
    void theCoreKnowsNeitherFilesNorLibraries() {
        noClasses()
                .that(in("quantity", "physics", "plant", "review", "learning", "flight"))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(
                                "java.io..",
                                "java.nio.file..",
                                "java.net..",
                                "java.sql..",
                                "org.snakeyaml..",
                                "picocli..",
                                "org.hipparchus..",
                                "org.ejml..",
                                "tools.jackson..",
                                "com.."))
                .check(HOUSE);
    }

    @Test
    void aLawIsArithmeticAndNothingElse() {
        classes()
                .that(in("physics"))
                .should(
                        onlyDependOnClassesThat(
                                resideInAnyPackage(
                                        "liftwright.physics..",
                                        "java.lang..",
                                        "java.util..",
                                        "org.jspecify..")))
                .check(HOUSE);
    }

    /**
     * Same input, same answer: time and hidden randomness come in as values, words leave as values.
     */
    @Test
    void onlyTheAppReadsClocksOrPrints() {
        noClasses()
                .that(DescribedPredicate.not(in("app")))
                .should()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callConstructor(Random.class)
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .dependOnClassesThat(resideInAnyPackage("java.util.logging.."))
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
                .check(HOUSE);
    }

    /** One package speaks to the network and reads JSON, and every other can be proved without. */
    @Test
    void onlyTheBayKnowsTheNetwork() {
        DescribedPredicate<JavaClass> bay = resideInAnyPackage("liftwright.app.bay..");
        DescribedPredicate<JavaClass> network =
                resideInAnyPackage(
                        "com.sun.net.httpserver..",
                        "java.net..",
                        "java.nio.channels..",
                        "tools.jackson..");
        assertThat(HOUSE.stream().filter(bay)).as("classes of the bay").hasSizeGreaterThan(20);
        noClasses()
                .that(
                        DescribedPredicate.not(bay)
                                .and(DescribedPredicate.not(in("rig")))
                                .and(DescribedPredicate.not(in("logbook"))))
                .should()
                .dependOnClassesThat(network)
                .check(HOUSE);
        // Forces files to the disk.
        noClasses()
                .that(in("logbook"))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(
                                "com.sun.net.httpserver..", "java.net..", "tools.jackson.."))
                .check(HOUSE);
        noClasses()
                .that(in("rig"))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(
                                "com.sun.net.httpserver..", "java.net..", "tools.jackson.."))
                .check(HOUSE);
        noClasses()
                .that(bay)
                .should()
                .dependOnClassesThat(resideInAnyPackage("picocli..", "liftwright.app"))
                .check(HOUSE);
    }

    /** A decimal comma in JSON or a dotless i in a key is a bug that only some countries see. */
    @Test
    void noTextDependsOnTheCountry() {
        noClasses()
                .should()
                .callMethod(String.class, "format", String.class, Object[].class)
                .orShould()
                .callMethod(String.class, "formatted", Object[].class)
                .orShould()
                .callMethod(String.class, "toLowerCase")
                .orShould()
                .callMethod(String.class, "toUpperCase")
                .orShould()
                .callMethod(Locale.class, "getDefault")
                .check(HOUSE);
    }

    /** Very slow where the processor lacks it, and its last digit differs from the plain form. */
    @Test
    void kernelsUseNoFusedMultiplyAdd() {
        noClasses()
                .should()
                .callMethod(Math.class, "fma", double.class, double.class, double.class)
                .check(HOUSE);
    }

    /** Libraries are our guests: what a room shows to others is Java's or ours. */
    @ParameterizedTest
    @MethodSource("rooms")
    void noRoomShowsALibraryToItsNeighbours(String room) {
        var shown = new ArrayList<String>();
        for (JavaClass each : HOUSE) {
            if (in(room).test(each) && each.getModifiers().contains(JavaModifier.PUBLIC)) {
                each.getMembers().stream()
                        .filter(ArchitectureTest::isVisible)
                        .filter(member -> typesOf(member).anyMatch(ArchitectureTest::isForeign))
                        .forEach(member -> shown.add(member.getFullName()));
                Stream.concat(each.getRawSuperclass().stream(), each.getRawInterfaces().stream())
                        .filter(ArchitectureTest::isForeign)
                        .forEach(type -> shown.add(each.getName() + " is a " + type.getName()));
            }
        }
        assertThat(shown).isEmpty();
    }

    @Test
    void everyPackageIsNullMarked() {
        var unmarked =
                HOUSE.stream()
                        .map(JavaClass::getPackage)
                        .distinct()
                        .filter(p -> !p.isAnnotatedWith(NullMarked.class))
                        .map(JavaPackage::getName);
        assertThat(unmarked).isEmpty();
    }

    @Test
    void noClassIsADrawer() {
        noClasses()
                .should()
                .haveNameMatching(".*(Utils?|Helpers?|Manager)(\\$.*)?")
                .because("a helper stands beside its one user, or is named after its idea")
                .check(HOUSE);
    }

    private static String roomOf(JavaClass each) {
        String below = each.getPackageName().substring("liftwright.".length());
        int dot = below.indexOf('.');
        return dot < 0 ? below : below.substring(0, dot);
    }

    private static void downstairs(String room, Set<String> found) {
        for (String next : USES.getOrDefault(room, Set.of())) {
            found.add(next);
            downstairs(next, found);
        }
    }

    private static DescribedPredicate<JavaClass> in(String... rooms) {
        DescribedPredicate<JavaClass> any = DescribedPredicate.not(alwaysTrue());
        for (String room : rooms) {
            any = any.or(resideInAnyPackage("liftwright." + room + ".."));
        }
        return any.as("in " + String.join(", ", rooms));
    }

    private static boolean isVisible(JavaMember member) {
        return member.getModifiers().contains(JavaModifier.PUBLIC)
                || member.getModifiers().contains(JavaModifier.PROTECTED);
    }

    private static Stream<JavaClass> typesOf(JavaMember member) {
        return switch (member) {
            case JavaField field -> field.getType().getAllInvolvedRawTypes().stream();
            case JavaCodeUnit code ->
                    Stream.concat(
                            Stream.concat(
                                    code.getReturnType().getAllInvolvedRawTypes().stream(),
                                    code.getParameterTypes().stream()
                                            .flatMap(t -> t.getAllInvolvedRawTypes().stream())),
                            code.getThrowsClause().getTypes().stream());
            default -> throw new IllegalStateException("what is " + member.getFullName());
        };
    }

    private static boolean isForeign(JavaClass type) {
        String name = type.getBaseComponentType().getName();
        return !type.getBaseComponentType().isPrimitive()
                && List.of("java.", "liftwright.").stream().noneMatch(name::startsWith);
    }
}
