package io.github.bedjoint.build;

import io.github.bedjoint.build.Floors.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What no source file may do, found by its text; a rule names what to do in its place. */
final class HouseRules {

    /** A rule: the pattern of what is wrong (in code, without comments and strings), and the advice. */
    private record Rule(Pattern wrong, String advice, boolean alsoInTheApp) {

        static Rule everywhere(String wrong, String advice) {
            return new Rule(Pattern.compile(wrong), advice, true);
        }

        static Rule inTheLibrary(String wrong, String advice) {
            return new Rule(Pattern.compile(wrong), advice, false);
        }
    }

    private static final List<Rule> RULES = List.of(
            Rule.inTheLibrary("\\bSystem\\.(out|err|exit)\\b", "a library does not print or exit"),
            Rule.inTheLibrary("\\bprintStackTrace\\b", "a library does not print"),
            Rule.inTheLibrary("\\b(System\\.(currentTimeMillis|nanoTime)|(Instant|Local\\w+|Zoned\\w+|Clock)\\.(now|system\\w*))\\s*\\(",
                    "the same job gives the same answer at any time: take the time as an argument"),
            Rule.everywhere("\\bString\\.format\\(\\s*(?!Locale\\b)", "name Locale.ROOT"),
            Rule.everywhere("\\.formatted\\(", "String.format with Locale.ROOT"),
            Rule.everywhere("\\.to(Lower|Upper)Case\\(\\s*\\)", "name Locale.ROOT"),
            Rule.everywhere("\\b(Locale\\.getDefault|ZoneId\\.systemDefault|TimeZone\\.getDefault|Charset\\.defaultCharset)\\b",
                    "name the locale, the zone, the charset"),
            Rule.everywhere("\\bMath\\.random\\b|\\bThreadLocalRandom\\b|\\bnew (Secure|Splittable)?Random\\(\\s*\\)", "seed it"),
            Rule.everywhere("\\bQuantities\\.getQuantity\\(\\s*\\)", "it reads 1.5 m as 15 m under a German locale: use units.Read"),
            Rule.everywhere("\\bcatch\\s*\\([^)]*\\)\\s*\\{\\s*\\}", "say what happens then"),
            Rule.everywhere("\\b(private|final)\\s+(final\\s+)?(@Nullable\\s+)?Quantity<[^;(={]*(;|=)",
                    "a stored Quantity compares by representation: store the inner number"));

    private static final Pattern MARKER = Pattern.compile("\\b(TODO|FIXME|XXX)\\b");

    private HouseRules() {
    }

    /** Every breach of a rule, one line each. */
    static List<String> breaches(List<SourceFile> files) {
        List<String> breaches = new ArrayList<>();
        for (SourceFile file : files) {
            String code = file.code();
            boolean app = file.packageName().equals(Floors.ROOT + ".app");
            for (Rule rule : RULES) {
                if (rule.alsoInTheApp() || !app) {
                    rule.wrong().matcher(code).results()
                            .forEach(r -> breaches.add(file.name() + ": " + r.group().strip() + ": " + rule.advice()));
                }
            }
            MARKER.matcher(file.text()).results().forEach(r -> breaches.add(file.name() + ": " + r.group()));
        }
        return breaches;
    }
}
