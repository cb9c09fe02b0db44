package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RollsCommandTest {
    @TempDir
    Path folder;

    private Path cuts;
    private Path stock;
    private String out = "";
    private String err = "";

    @BeforeEach
    void write() throws IOException {
        cuts = Files.writeString(folder.resolve("cuts.csv"), "id,width,length mm,quantity,group\na,1.36 m,3050,5,front\nb,0.56 m,3050,1,front\n");
        stock = Files.writeString(folder.resolve("stock.csv"), "id,width,length,price EUR,available\nA-25,1.36 m,25 m,420.00,\nA-10,1.36 m,10 m,198.00,2\n");
    }

    private int run(String... options) {
        String[] args = new String[3 + options.length];
        args[0] = "rolls";
        args[1] = cuts.toString();
        args[2] = stock.toString();
        System.arraycopy(options, 0, args, 3, options.length);
        Run run = Run.of(args);
        out = run.out();
        err = run.err();
        return run.code();
    }

    /** By hand: 10 m rolls hold three panels of 3.05 m with or without lead and tail; two of them cost 396, one of 25 m 420. */
    @Test
    void rolls_plainLists_giveTheCheapestPlan() {
        assertThat(run("--lead", "0.3 m", "--tail", "20 cm", "--gap", "10 mm")).isZero();
        assertThat(out).contains("2 rolls, EUR 396.00").contains("9170.0 mm").contains("330.0 mm");
        assertThat(err).isEmpty();
    }

    /** Without options nothing is lost: 3 x 3.05 = 9.15 used, 0.85 left. */
    @Test
    void rolls_withoutOptions_loseNothing() {
        assertThat(run("--format", "json")).isZero();
        assertThat(out).contains("\"cost\" : 396.00", "\"lowerBound\" : 396.00", "\"proven\" : true", "\"used\" : 9.15", "\"remnant\" : 0.85", "\"certificate\"");
    }

    /** 3 x 3.05 m on 10 m: 9.15 m of panels 1.36 m wide, of which one is 0.56 m: used 27.2 m2 less 1.36 x 18.3 - 2.44 = 22.448 m2 of panels, so 17.5 % are not. */
    @Test
    void rolls_asText_tellsWhyAndWhereTheWasteIs() {
        assertThat(run()).isZero();
        assertThat(out).contains(
                """

                WHY THESE ROLLS
                  Counting all panels gives 6. One A-25 takes all and one A-10 (2 at hand) takes at most 3. The
                    cheapest rolls with room for all of it are 2 x A-10 for EUR 396.00.
                  No plan costs less than EUR 396.00, and this one costs just that.

                WHERE THE WASTE IS, IN SHARES OF THE FILM OPENED
                                not panels  width trim  remnants kept
                  roll 1, A-10       8.5 %       0.0 %          8.5 %
                """);
        assertThat(out).containsPattern("all film +17\\.5 % +9\\.0 % +8\\.5 %");
        assertThat(out).doesNotContain("CENTIMETRE");
    }

    /** Six of 3.05 m on one roll need 18.3 m: 8.3 m more. Seven decimals are not asked of anyone; the roll is worth 198 / 10 m x 1 cm x 2 rolls = 0.396. */
    @Test
    void rolls_oneMore_saysWhatLongerRollsSave() {
        assertThat(run("--one-more")).isZero();
        assertThat(out).contains("\nONE MORE CENTIMETRE OF ROLL\n", "nothing can be saved", "worth EUR 0.40", "8300.0 mm more: 1 roll for EUR 198.00, EUR 198.00 less");
        assertThat(run("--one-more", "--format", "json")).isZero();
        assertThat(out).contains(
                "\"longerRolls\" : {", "\"moreM\" : 0.01", "\"costByPrices\" : 396.00", "\"rate\" : 0.396", "\"savesFromM\" : 8.3", "\"savesFromCost\" : 198.00",
                "\"least\" : true");
        assertThat(out).contains("\"reasons\" : [", "\"waste\" : {", "\"width-trim\" : ");
        assertThat(run("--one-more", "--units", "imperial")).isZero();
        assertThat(out).contains("Every roll 3/8\" longer");
    }

    @Test
    void rolls_asCsv_defusesFormulas() throws IOException {
        Files.writeString(cuts, "id,width,length,quantity\n\"=1+1,x\",1.36 m,3 m,1\n");
        assertThat(run("--format", "csv")).isZero();
        assertThat(out).isEqualTo("roll,stock,place,piece,along m,across m,turned\n1,A-10,1,\"'=1+1,x\",0,0,no\n");
    }

    @Test
    void rolls_withoutWidthsAndCurrency_planLengthsOnly() throws IOException {
        Files.writeString(cuts, "id,length,quantity\nx,60 mm,3\ny,40 mm,3\n");
        Files.writeString(stock, "id,width,length,price,available\nbar,,100 mm,1,\n");
        assertThat(run()).isZero();
        assertThat(out).contains("3 rolls, 3, proven the cheapest");
    }

    /** By hand: two of 0.6 x 3 m beside each other on 1.36 m, and 3 m turned lies across no roll; one across needs 6 m. */
    @Test
    void rolls_narrowPanels_lieSideBySideAtNamedPlaces() throws IOException {
        Files.writeString(cuts, "id,width,length,quantity,group,rotate\nn,0.6 m,3 m,2,front,yes\n");
        assertThat(run("--gap", "10 mm")).isZero();
        assertThat(out).contains("cuts from edge to edge").contains("610.0 mm").contains("1 roll, EUR 198.00, proven the cheapest");
        assertThat(run("--gap", "10 mm", "--format", "json")).isZero();
        assertThat(out).contains("\"cuts\" : \"guillotine\"", "\"across\" : 0.61", "\"used\" : 3.0", "\"turned\" : false");
        assertThat(run("--cuts", "cross", "--format", "json")).isZero();
        assertThat(out).contains("\"cuts\" : \"cross\"", "\"used\" : 6.0");
    }

    @Test
    void rolls_wrongRotate_namesRowColumnAndValue() throws IOException {
        Files.writeString(cuts, "id,width,length,quantity,rotate\nok,1 m,3 m,1,no\nbad,1 m,3 m,1,90\n");
        assertThat(run()).isEqualTo(2);
        assertThat(err).contains("rotate").contains("90").contains("yes or no").contains("3");
    }

    @Test
    void rolls_cutThatFitsNoRoll_isNamed() throws IOException {
        Files.writeString(cuts, "id,width,length,quantity\nlong,1.36 m,26 m,1\nok,1.36 m,2 m,1\n");
        assertThat(run("--format", "json")).isEqualTo(3);
        assertThat(out).contains("\"feasible\" : false", "\"cut\" : \"long\"", "cut-too-long");
        assertThat(err).isEqualTo("Panel long is 26000.0 mm long, and the longest roll wide enough for it gives 25000.0 mm.\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "id,width,length,quantity;a,1 m,3 kg,1    | cut list, row 2, column length is '3 kg'",
                "id,width,length,quantity;a,1 m,300,1     | cut list, row 2, column length is '300'",
                "id,width,length,quantity;a,1 m,-3 m,1    | cut list, row 2, column length is '-3 m'",
                "id,width,length,quantity;a,1 m,3 m,1.5   | cut list, row 2, column quantity is '1.5'",
                "id,width,length,quantity;a,1 m,3 m,0     | cut list, row 2, column quantity is '0'",
                "id,width,length,quantity;a,1 m,3 m,1;a,1 m,2 m,1 | cut list, row 3, column id is 'a'",
                "id,width,length,quantity;a,1 m,3 m,1;b,,2 m,1    | cut list, row 3, column width is ''",
                "id,width,length,quantity;,1 m,3 m,1      | cut list, row 2, column id is ''",
                "id,width,quantity;a,1 m,1                | cut list, heading is 'id,width,quantity'",
                "id,width,length,colour;a,1 m,3 m,red     | cut list, heading is 'colour'",
                "id,width,length;a,1 m                    | cut list, row 2 is '2 fields'",
                "id,width,length                          | cut list is 'without rows'"
            })
    void rolls_badCutList_namesRowColumnAndValue(String table, String start) throws IOException {
        Files.writeString(cuts, table.replace(';', '\n'));
        assertThat(run()).isEqualTo(2);
        assertThat(err.replace("'", "")).startsWith(start.replace("'", "")).endsWith("\n");
        assertThat(err.lines()).hasSize(1);
        assertThat(out).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "id,width,length,price,available;r,1.36 m,10 m,EUR 1.234,1              | column price is 'EUR 1.234'",
                "id,width,length,price,available;r,1.36 m,10 m,EUR 1,1;s,1.36 m,9 m,USD 1,1 | row 3, column price is 'USD 1'",
                "id,width,length,price,available;r,1.36 m,10 m,XQX 1,1                  | column price is 'XQX 1'",
                "id,width,length,price,available;r,1.36 m,10 m,\"1,50\",1               | column price is '1,50'",
                "id,width,length,price,available;r,1.36 m,10 m,EUR 1,-1                 | column available is '-1'",
                "id,width,length,price,available;r,1.36 m,99 km,EUR 1,1                 | column length is '99 km'"
            })
    void rolls_badStockList_namesRowColumnAndValue(String table, String part) throws IOException {
        Files.writeString(stock, table.replace(';', '\n'));
        assertThat(run()).isEqualTo(2);
        assertThat(err).startsWith("stock list, row ").contains(part);
    }

    @Test
    void rolls_missingFileFolderOrOption_isBadInput() throws IOException {
        Files.delete(stock);
        assertThat(run()).isEqualTo(2);
        assertThat(err).startsWith("There is no file '").contains("stock.csv");
        Files.createDirectory(stock);
        assertThat(run()).isEqualTo(2);
        assertThat(err).contains("must be a file");
        assertThat(run("--lead", "3")).isEqualTo(2);
        assertThat(run("--wrong")).isEqualTo(2);
    }
}
