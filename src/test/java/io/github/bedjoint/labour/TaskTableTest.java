package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaskTableTest {
    private static final String HEAD = "task,title,stage,driver,pace,people,machine,attended,allowance,height,basis,source\n";
    private static final String ROW = "hang,Hang,SITE,PANEL,12 min,1,NONE,1,yes,no,SHOP,our log\n";

    @Test
    void defaults_everyPace_saysThatItIsNotMeasured() {
        assertThat(TaskTable.defaults().tasks()).hasSizeGreaterThan(12).allSatisfy(task -> {
            assertThat(task.source().kind()).isIn(Source.Kind.ASSUMED, Source.Kind.PRACTICE);
            assertThat(task.pace().inner()).isPositive();
        });
    }

    @Test
    void defaults_machines_runAlonePartly() {
        assertThat(TaskTable.defaults().task("print").machine()).isEqualTo(Machine.PRINTER);
        assertThat(TaskTable.defaults().task("print").attended()).isLessThan(1);
        assertThat(TaskTable.defaults().task("hang-two").people()).isEqualTo(2);
    }

    @Test
    void parse_whatToCsvWrote_isEqual() {
        assertThat(TaskTable.parse(TaskTable.defaults().toCsv())).isEqualTo(TaskTable.defaults());
    }

    @Test
    void parse_columnsInAnotherOrder_same() {
        String turned = "source,basis,height,allowance,attended,machine,people,pace,driver,stage,title,task\n"
                + "our log,SHOP,no,yes,1,NONE,1,12 min,panel,site,Hang,hang\n";
        assertThat(TaskTable.parse(turned)).isEqualTo(TaskTable.parse(HEAD + ROW));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "hang,Hang,SITE,PANEL,12 min/m,1,NONE,1,yes,no,SHOP,log | row 3, column pace | 12 min/m",
        "hang,Hang,SITE,PANEL,twelve,1,NONE,1,yes,no,SHOP,log | row 3, column pace | twelve",
        "hang,Hang,ROOF,PANEL,12 min,1,NONE,1,yes,no,SHOP,log | row 3, column stage | ROOF",
        "hang,Hang,SITE,PANNEL,12 min,1,NONE,1,yes,no,SHOP,log | row 3, column driver | PANNEL",
        "hang,Hang,SITE,PANEL,12 min,two,NONE,1,yes,no,SHOP,log | row 3, column people | two",
        "hang,Hang,SITE,PANEL,12 min,0,NONE,1,yes,no,SHOP,log | row 3, column task | people",
        "hang,Hang,SITE,PANEL,12 min,1,NONE,0.5,yes,no,SHOP,log | row 3, column task | attended",
        "hang,Hang,SITE,PANEL,12 min,1,NONE,1,maybe,no,SHOP,log | row 3, column allowance | maybe",
        "hang,Hang,SITE,PANEL,12 min,1,NONE,1,yes,no,SHOP, | row 3, column source | blank",
        "hang,Hang,SITE,PANEL,12 min,1,NONE,1,yes,no,HEARSAY,log | row 3, column source | HEARSAY",
        "Hang It,Hang,SITE,PANEL,12 min,1,NONE,1,yes,no,SHOP,log | row 3, column task | Hang It",
        "fold,Fold,SITE,PANEL,12 min,1,NONE,1,yes,no,SHOP,log | row 3, column task | fold",
        "day,Day,PRODUCTION,DAY,12 min,1,NONE,1,yes,no,SHOP,log | row 3, column task | PRODUCTION",
        "hang,Hang,SITE | row 3 | 3 fields"
    })
    void parse_badRow_namesRowColumnAndValue(String row, String place, String value) {
        String fold = ROW.replace("hang", "fold");
        assertThatThrownBy(() -> TaskTable.parse(HEAD + fold + row + "\n"))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining(place)
                .hasMessageContaining(value);
    }

    @Test
    void parse_headingWrong_named() {
        assertThatThrownBy(() -> TaskTable.parse(HEAD.replace("pace", "speed") + ROW)).hasMessageContaining("'pace'");
        assertThatThrownBy(() -> TaskTable.parse(HEAD.replace("source", "source,colour") + ROW.replace("\n", ",red\n")))
                .hasMessageContaining("'colour'");
        assertThatThrownBy(() -> TaskTable.parse("")).hasMessageContaining("empty");
    }

    @Test
    void withPace_ofOneTask_leavesTheRest() {
        Pace mine = Pace.parse(Driver.HEATED_AREA, "7 min/m2");
        TaskTable table = TaskTable.defaults().withPace("heat-roll", mine, Source.shop("log of last year"));
        assertThat(table.task("heat-roll").pace()).isEqualTo(mine);
        assertThat(table.without("heat-roll")).isEqualTo(TaskTable.defaults().without("heat-roll"));
        assertThat(TaskTable.defaults().task("heat-roll").pace()).isNotEqualTo(mine);
        assertThatThrownBy(() -> TaskTable.defaults().withPace("seam", mine, Source.shop("log")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("pace of task seam");
        assertThatThrownBy(() -> TaskTable.defaults().without("polish")).hasMessageContaining("'polish'");
    }
}
