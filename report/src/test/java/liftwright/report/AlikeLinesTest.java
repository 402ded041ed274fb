package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Evidence;
import org.junit.jupiter.api.Test;

class AlikeLinesTest {

    private static Evidence.Assumption assumed(String path, String value) {
        return new Evidence.Assumption(path, value, "usual");
    }

    @Test
    void itemsOfOneListThatSayTheSameShareALine() {
        assertThat(
                        AlikeLines.of(
                                List.of(
                                        assumed("site/pressure", "1 bar"),
                                        assumed("cells/A/measured/1/series", "1"),
                                        assumed("cells/A/measured/1/parallel", "1"),
                                        assumed("cells/A/measured/2/series", "1"),
                                        assumed("cells/A/measured/3/series", "12"),
                                        assumed("cells/A/measured/5/series", "1"),
                                        assumed("cells/B/measured/1/series", "1"))))
                .containsExactly(
                        "site/pressure: 1 bar (usual)",
                        "cells/A/measured/1–2, 5/series: 1 (usual)",
                        "cells/A/measured/1/parallel: 1 (usual)",
                        "cells/A/measured/3/series: 12 (usual)",
                        "cells/B/measured/1/series: 1 (usual)");
    }
}
