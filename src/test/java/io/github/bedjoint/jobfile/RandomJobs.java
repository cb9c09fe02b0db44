package io.github.bedjoint.jobfile;

import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Job files drawn from a seed, as trees. The same seed gives the same job in metric or in imperial units, and as in a mirror.
 *
 * <p>Every length is a whole number of sixteenths of an inch, which is exact in millimetres too (1.5875), and every rate is exact in both.
 */
public final class RandomJobs {
    private static final List<String> PROFILES = List.of("flush", "raked", "v", "concave", "half-round", "struck", "weathered");
    private static final List<String> QUESTIONS = List.of(
            "dry-abrasion", "solvent-used", "mains-power", "historic", "new-substrate", "foam-backed", "damp", "painted",
            "paint-before-1978", "tested-free-of-lead", "paint-lifts", "low-surface-energy");
    private static final BigDecimal FOOT2 = new BigDecimal("0.09290304");

    private final Random random;
    private final boolean metric;
    private final boolean mirrored;
    private final boolean simple;
    private boolean rich;

    private RandomJobs(long seed, boolean metric, boolean mirrored, boolean simple) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L);
        this.metric = metric;
        this.mirrored = mirrored;
        this.simple = simple;
    }

    /** A job in metric units. */
    public static Map<String, Object> tree(long seed) {
        return new RandomJobs(seed, true, false, false).job();
    }

    /** The same job, in these units. */
    public static Map<String, Object> tree(long seed, UnitStyle style) {
        return new RandomJobs(seed, style == UnitStyle.METRIC, false, false).job();
    }

    /** The same job in a mirror that stands upright: walls, edges, openings, start and weather side change over. */
    public static Map<String, Object> mirrored(long seed) {
        return new RandomJobs(seed, true, true, false).job();
    }

    /** A job of one rectangular wall without openings, with rolls without end and no fixed sums: more wall can only cost more. */
    public static Map<String, Object> simple(long seed) {
        return new RandomJobs(seed, true, false, true).job();
    }

    /** A job with everything that is optional in a job file. */
    public static Map<String, Object> rich(long seed) {
        RandomJobs jobs = new RandomJobs(seed, true, false, false);
        jobs.rich = true;
        return jobs.job();
    }

    /** A wall alone, for what follows from its surface. */
    public static Wall drawnWall(long seed) {
        try {
            String json = JsonTree.write(new RandomJobs(seed, true, false, true).wall("Wall"));
            return Fields.whole(JsonNode.read(new StringReader(json)), WallReader::wall);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Map<String, Object> job() {
        Map<String, Object> job = new LinkedHashMap<>();
        job.put("bedjoint", 1);
        job.put("name", "Drawn job");
        job.put("currency", "EUR");
        job.put("walls", walls());
        if (maybe(3)) {
            job.put("deduction", pick("all", "none", Map.of("atLeast", area(between(0, 40)))));
        }
        int filmWidth = between(30, 64) * 16;
        int overlapLeast = between(4, 16);
        job.put("film", film(filmWidth, overlapLeast));
        if (often()) {
            job.put("laminate", laminate(filmWidth));
        }
        if (often()) {
            job.put("ink", ink());
        }
        job.put("layout", layout(overlapLeast));
        if (maybe(3)) {
            job.put("takeUp", Map.of("along", decimal(0, 100, 2), "up", decimal(0, 100, 2)));
        }
        if (often()) {
            BigDecimal perM2 = decimal(10, 300, 0);
            job.put("coatings", List.of(Map.of(
                    "name", "Primer",
                    "consumption", metric ? perM2 + " mL/m2" : perM2.multiply(FOOT2).toPlainString() + " mL/ft2",
                    "coats", between(1, 3),
                    "price", money(100, 3000) + "/L")));
        }
        if (often()) {
            job.put("cutting", cutting());
        }
        job.put("labour", labour());
        if (often()) {
            job.put("calendar", calendar());
        }
        if (often()) {
            job.put("site", site());
        }
        if (often()) {
            job.put("consumables", List.of(Map.of("title", "Cleaner", "price", perArea(money(1, 300)))));
        }
        if (maybe(2) && !simple) {
            job.put("extras", extras());
        }
        job.put("price", price());
        visits(job);
        access(job);
        if (job.containsKey("calendar")) {
            weather(JsonTree.object(job.get("calendar")));
        }
        if (!simple) {
            orders(job);
            shelfLife(job);
        }
        for (Object wall : JsonTree.array(job.get("walls"))) {
            if (maybe(3) || rich) {
                JsonTree.object(wall).put("picture", Map.of(
                        "left", length(between(-600, 600)), "bottom", length(between(-600, 600)),
                        "width", length(between(1, 6000)), "height", length(between(1, 3000))));
            }
        }
        return job;
    }

    private void orders(Map<String, Object> job) {
        List<Object> offers = JsonTree.array(JsonTree.object(job.get("film")).get("rolls"));
        if (offers.size() > 1 && maybe(3)) {
            JsonTree.object(offers.get(1)).put("width", length(between(30, 64) * 16));
        }
        if (maybe(3)) {
            Map<String, Object> roll = JsonTree.object(JsonTree.array(JsonTree.object(job.get("film")).get("rolls")).get(0));
            roll.put("leastOrder", between(0, 5));
            roll.put("inCarton", between(1, 4));
        }
        if (maybe(3)) {
            int liner = between(20, 120);
            int weight = between(100, 300);
            String perKg = money(0, 300);
            job.put("disposal", Map.of("liner", liner + " g/m2", "film", weight + " g/m2", "price", perKg + "/kg"));
        }
    }

    private void shelfLife(Map<String, Object> job) {
        for (String material : List.of("film", "laminate")) {
            if (job.containsKey(material) && maybe(3)) {
                Object first = JsonTree.array(JsonTree.object(job.get(material)).get("rolls")).get(0);
                JsonTree.object(first).put("bestBefore", "2027-0" + between(1, 9) + "-" + between(10, 28));
            }
        }
    }

    /** What was added to job files later is drawn last, so that older seeds keep the rest of their jobs. */
    private void visits(Map<String, Object> job) {
        Map<String, Object> labour = JsonTree.object(job.get("labour"));
        if (maybe(3) || rich) {
            List<Object> trips = new ArrayList<>();
            trips.add(trip(pick("survey", "test-patch", "install", "inspection", "removal"), List.of()));
            if (maybe(2)) {
                trips.add(trip("wash", labour.toString().contains("wash") ? List.of() : List.of("wash")));
            }
            labour.put("trips", trips);
        }
        if (job.containsKey("calendar") && (maybe(3) || rich)) {
            JsonTree.object(job.get("calendar")).put("wipe", Map.of("atLeast", time(between(0, 60)), "atMost", time(between(50, 200))));
        }
    }

    private void weather(Map<String, Object> calendar) {
        if (maybe(3)) {
            calendar.put("rain", List.of(calendar.get("start"), "2027-06-1" + between(0, 9)));
            calendar.put("dryAfterRain", time(60 * between(0, 72)));
        }
        if (maybe(3)) {
            calendar.put("people", between(4, 8));
        }
        if (maybe(3)) {
            calendar.put("leadTimes", List.of(Map.of(
                    "title", "Permit", "takes", time(60 * between(0, 400)), "before", pick("production", "washing", "installing"))));
        }
    }

    private void access(Map<String, Object> job) {
        if (maybe(3) || rich) {
            Map<String, Object> heights = new LinkedHashMap<>();
            heights.put("bands", List.of(Map.of("upTo", length(between(800, 1600)), "access", pick("ground", "platform"))));
            heights.put("above", pick("scaffold", "lift", "ladder"));
            if (maybe(2)) {
                heights.put("factors", Map.of("lift", decimal(100, 250, 2), "scaffold", decimal(100, 250, 2)));
            }
            job.put("heights", heights);
            for (Object wall : JsonTree.array(job.get("walls"))) {
                if (maybe(2)) {
                    JsonTree.object(wall).put("bottom", length(between(0, 1600)));
                }
            }
        }
        if (maybe(3) || rich) {
            Map<String, Object> hire = new LinkedHashMap<>();
            hire.put("access", pick("platform", "scaffold", "lift"));
            hire.put("name", "Hired");
            hire.put("delivery", money(0, 30_000));
            hire.put("dayRate", money(0, 30_000));
            hire.put("leastDays", between(0, 6));
            hire.put("items", between(1, 2));
            hire.put("alsoForWashing", random.nextBoolean());
            job.put("hire", List.of(hire));
        }
        Map<String, Object> labour = JsonTree.object(job.get("labour"));
        if (maybe(3) || rich) {
            labour.put("premium", Map.of("name", "Night work", "shop", decimal(0, 50, 2), "site", decimal(0, 100, 2)));
        }
        if (maybe(3) || rich) {
            labour.put("learning", Map.of("law", pick("unit", "cumulative-average"), "rate", decimal(60, 100, 2)));
        }
    }

    private Map<String, Object> trip(String purpose, List<String> tasks) {
        Map<String, Object> trip = new LinkedHashMap<>();
        trip.put("purpose", purpose);
        if (maybe(2)) {
            trip.put("count", between(1, 3));
        }
        trip.put("people", between(1, 3));
        if (maybe(2)) {
            trip.put("travel", time(between(0, 120)));
        }
        trip.put("onSite", time(between(0, 240)));
        if (maybe(2)) {
            trip.put("wait", time(60 * between(0, 200)));
        }
        if (!tasks.isEmpty()) {
            trip.put("tasks", tasks);
        }
        return trip;
    }

    private List<Object> walls() {
        List<Object> walls = new ArrayList<>();
        int count = simple ? 1 : between(1, 3);
        for (int i = 0; i < count; i++) {
            walls.add(wall("Wall " + (char) ('A' + i)));
        }
        return walls;
    }

    private Map<String, Object> wall(String name) {
        Map<String, Object> wall = new LinkedHashMap<>();
        wall.put("name", name);
        int width = between(600, 6000);
        int height = between(400, 2600);
        if (simple || random.nextInt(3) > 0) {
            wall.put("width", length(width));
            wall.put("height", length(height));
        } else {
            int peak = between(1, width - 1);
            int left = between(height / 2, height);
            int right = between(height / 2, height);
            wall.put("outline", outline(List.of(List.of(0, 0), List.of(width, 0), List.of(width, right), List.of(peak, height), List.of(0, left)), width));
            height = Math.min(left, right);
        }
        wall.put("surface", random.nextInt(12) == 0
                ? Map.of("kind", "adjusted", "areaRatio", decimal(100, 140, 2), "shape", surface())
                : surface());
        if (maybe(2)) {
            Map<String, Object> edges = new LinkedHashMap<>();
            for (String side : List.of("left", "right", "bottom", "top")) {
                if (random.nextInt(4) > 0) {
                    edges.put(mirrored ? other(side) : side, edge(side));
                }
            }
            wall.put("edges", edges);
        }
        if (maybe(2) && !simple) {
            wall.put("openings", openings(width, height));
        }
        if (often()) {
            wall.put("tolerances", Map.of("wall", length(between(1, 20)), "opening", length(between(0, 9))));
        }
        wall.put("access", pick("ground", "platform", "scaffold", "lift", "ladder"));
        if (maybe(3)) {
            wall.put("accessFactor", decimal(80, 250, 2));
        }
        return wall;
    }

    /** Against the clock from the lower left; in a mirror the other way round, so the order of the corners is turned. */
    private List<Object> outline(List<List<Integer>> corners, int width) {
        List<Object> points = new ArrayList<>();
        for (List<Integer> corner : corners) {
            points.add(mirrored ? 0 : points.size(), List.of(length(mirrored ? width - corner.get(0) : corner.get(0)), length(corner.get(1))));
        }
        return points;
    }

    private Map<String, Object> surface() {
        if (maybe(3)) {
            return Map.of("kind", "flat");
        }
        if (random.nextInt(8) == 0) {
            return measured();
        }
        Map<String, Object> surface = new LinkedHashMap<>();
        surface.put("kind", "masonry");
        surface.put("unit", Map.of("length", length(between(100, 260)), "height", length(between(32, 130))));
        int head = between(3, 10);
        int bed = maybe(2) ? head : between(3, 10);
        if (head == bed) {
            surface.put("joint", length(head));
        } else {
            surface.put("headJoint", length(head));
            surface.put("bedJoint", length(bed));
        }
        surface.put("profile", profile(Math.min(head, bed)));
        if (maybe(3)) {
            surface.put("headProfile", profile(head));
        }
        if (maybe(2)) {
            surface.put("bond", pick("stretcher", "stack", "flemish", "english"));
        }
        if (maybe(3)) {
            surface.put("faceRatio", decimal(100, 140, 2));
        }
        if (maybe(3) && !surface.toString().contains("concave")) { // an arc as deep as its joint allows has no room for more
            surface.put("tolerances", Map.of("unitLength", length(1), "bedJoint", metric ? "0.254 mm" : "0.01 in", "faceRatio", decimal(1, 5, 2)));
        }
        return surface;
    }

    private Map<String, Object> measured() {
        Map<String, Object> surface = new LinkedHashMap<>();
        surface.put("kind", pick("profile", "spots", "grid"));
        switch ((String) surface.get("kind")) {
            case "profile" -> {
                surface.put("up", contour());
                if (maybe(2)) {
                    surface.put("along", contour());
                }
                if (maybe(2)) {
                    surface.put("tolerances", Map.of("height", length(1), "place", length(between(0, 1))));
                }
            }
            case "spots" -> {
                surface.put("unit", pick("Modular", "DIN NF"));
                surface.put("readAs", pick("raked", "struck", "weathered"));
                surface.put("headsFlush", random.nextBoolean());
                surface.put("depths", List.of(length(between(0, 4)), length(between(1, 6)), length(between(1, 6))));
            }
            default -> {
                surface.put("pitch", length(between(1, 8)));
                surface.put("heightUnit", length(1));
                surface.put("diagonal", pick("falling", "rising"));
                surface.put("rows", List.of(heights(), heights(), heights(), heights()));
                if (maybe(2)) {
                    surface.put("tolerances", Map.of("height", metric ? "0.254 mm" : "0.01 in"));
                }
            }
        }
        return surface;
    }

    private List<Object> contour() {
        List<Object> points = new ArrayList<>();
        int place = 0;
        for (int i = 0; i < 8; i++) {
            points.add(List.of(length(place), length(between(0, 3))));
            place += between(0, 20) + (i == 0 ? 1 : 0);
        }
        return points;
    }

    private List<Object> heights() {
        return List.of(between(0, 3), between(0, 3), between(0, 3), between(0, 3));
    }

    private Map<String, Object> profile(int joint) {
        String kind = PROFILES.get(random.nextInt(PROFILES.size()));
        Map<String, Object> profile = new LinkedHashMap<>();
        profile.put("kind", kind);
        switch (kind) {
            case "raked" -> profile.put("depth", length(between(1, 8)));
            case "v" -> profile.put("degrees", decimal(300, 1600, 1));
            case "concave" -> profile.put("sagitta", length(between(1, Math.max(1, joint / 2))));
            case "struck", "weathered" -> profile.put("recess", length(between(1, 6)));
            default -> { }
        }
        return profile;
    }

    private Map<String, Object> edge(String side) {
        Map<String, Object> edge = new LinkedHashMap<>();
        edge.put("kind", side.equals("bottom")
                ? pick("ground", "free")
                : pick("free", "soffit", "inside-corner", "outside-corner", "movement-joint"));
        if (maybe(2)) {
            edge.put("extra", length(between(0, 64)));
        }
        if (maybe(4)) {
            edge.put("sealed", random.nextBoolean());
        }
        return edge;
    }

    private List<Object> openings(int width, int height) {
        List<int[]> taken = new ArrayList<>();
        List<Object> openings = new ArrayList<>();
        int wanted = between(0, 4);
        for (int i = 0; i < wanted; i++) {
            int w = between(16, 700);
            int h = between(16, 900);
            String kind = pick("door", "window", "vent", "weep-hole", "alarm", "sign", "other");
            int left = between(0, Math.max(0, width - w));
            int bottom = kind.equals("door") ? 0 : between(0, Math.max(0, height - h));
            String treatment = pick("trimmed", "turned-in", "left-whole", "never-covered");
            int turn = between(0, 32);
            boolean open = List.of("vent", "weep-hole", "alarm").contains(kind);
            int[] box = {left, bottom, left + w, bottom + h};
            boolean fits = w < width && h < height && (w < width - 100 || h < height - 100) && taken.stream()
                    .noneMatch(o -> box[0] < o[2] && o[0] < box[2] && box[1] < o[3] && o[1] < box[3]);
            if (fits) {
                taken.add(box);
                Map<String, Object> opening = new LinkedHashMap<>();
                opening.put("kind", kind);
                opening.put("left", length(mirrored ? width - left - w : left));
                opening.put("bottom", length(bottom));
                opening.put("width", length(w));
                opening.put("height", length(h));
                if (!open && treatment.equals("turned-in")) {
                    opening.put("turnedIn", length(turn));
                } else if (!open) {
                    opening.put("treatment", treatment);
                }
                openings.add(opening);
            }
        }
        return openings;
    }

    private Map<String, Object> film(int width, int overlapLeast) {
        Map<String, Object> film = new LinkedHashMap<>();
        film.put("name", "Film");
        film.put("rollWidth", length(width));
        if (maybe(2)) {
            film.put("edgeMargin", length(between(0, 12)));
        }
        film.put("overlap", Map.of("least", length(overlapLeast), "most", length(overlapLeast + 16)));
        if (maybe(2)) {
            film.put("usableStretch", decimal(0, 200, 2));
        }
        if (maybe(4)) {
            film.put("thickness", length(1));
        }
        if (maybe(3)) {
            film.put("outgas", time(between(0, 100) * 60));
        }
        if (maybe(3)) {
            film.put("surfaceTemperature", Map.of("least", celsius(between(0, 15)), "most", celsius(between(20, 60))));
        }
        film.put("rolls", rolls("F", 25));
        return film;
    }

    private List<Object> rolls(String letter, int least) {
        List<Object> rolls = new ArrayList<>();
        int count = between(1, 3);
        boolean counted = !simple && maybe(3);
        for (int i = 0; i < count; i++) {
            Map<String, Object> roll = new LinkedHashMap<>();
            roll.put("id", letter + i);
            roll.put("length", length(between(least, 150) * 192));
            roll.put("price", money(5_000, 90_000));
            if (counted && i > 0) {
                roll.put("available", between(0, 4));
            }
            if (maybe(3)) {
                roll.put("lot", "lot " + between(1, 2));
            }
            rolls.add(roll);
        }
        return rolls;
    }

    private Map<String, Object> laminate(int filmWidth) {
        Map<String, Object> laminate = new LinkedHashMap<>();
        laminate.put("name", "Laminate");
        laminate.put("rollWidth", length(filmWidth + between(0, 16)));
        laminate.put("leadIn", length(between(0, 600)));
        laminate.put("rolls", rolls("L", 150));
        return laminate;
    }

    private Map<String, Object> ink() {
        Map<String, Object> ink = new LinkedHashMap<>();
        ink.put("family", pick("solvent", "eco-solvent", "latex", "uv"));
        BigDecimal perM2 = decimal(40, 200, 1);
        ink.put("consumption", metric ? perM2 + " mL/m2" : perM2.multiply(FOOT2).toPlainString() + " mL/ft2");
        if (maybe(2)) {
            ink.put("coverage", decimal(10, 100, 2));
        }
        BigDecimal perLitre = decimal(20, 200, 0);
        ink.put("price", metric
                ? "EUR " + perLitre + "/L"
                : "EUR " + perLitre.multiply(new BigDecimal("3.785411784")).toPlainString() + "/gal");
        return ink;
    }

    private Map<String, Object> layout(int overlapLeast) {
        Map<String, Object> layout = new LinkedHashMap<>();
        layout.put("direction", pick("drops", "bands", "cheapest"));
        layout.put("fit", pick("full-width", "equalised"));
        if (maybe(2)) {
            layout.put("overlap", length(overlapLeast + between(0, 16)));
        }
        if (maybe(2)) {
            layout.put("leastSliver", length(between(0, 96)));
        }
        String drops = side(pick("left", "right"));
        switch (random.nextInt(4)) {
            case 0 -> layout.put("start", drops);
            case 1 -> layout.put("start", List.of(drops, pick("bottom", "top")));
            default -> {
                if (mirrored && !layout.get("direction").equals("cheapest")) {
                    layout.put("start", "right");
                }
            }
        }
        if (maybe(2)) {
            layout.put("weatherSide", side(pick("left", "right")));
        }
        return layout;
    }

    private String side(String drawn) {
        return mirrored ? other(drawn) : drawn;
    }

    private static String other(String side) {
        return side.equals("left") ? "right" : side.equals("right") ? "left" : side;
    }

    private Map<String, Object> cutting() {
        Map<String, Object> cutting = new LinkedHashMap<>();
        cutting.put("lead", length(between(0, 300)));
        cutting.put("tail", length(between(0, 300)));
        cutting.put("gap", length(between(0, 16)));
        cutting.put("keepRemnantsFrom", length(between(100, 1000)));
        if (maybe(3) && !simple) {
            cutting.put("remnantValuePercent", between(0, 100));
        }
        if (maybe(3) && !simple) {
            cutting.put("oneLotPerWall", random.nextBoolean());
        }
        if (maybe(4) && !simple) {
            cutting.put("turn", random.nextBoolean());
        }
        return cutting;
    }

    private Map<String, Object> labour() {
        Map<String, Object> labour = new LinkedHashMap<>();
        if (random.nextInt(5) > 0) {
            labour.put("production", perHour(money(2_000, 9_000)));
            labour.put("site", perHour(money(2_000, 9_000)));
        }
        labour.put("siteCrew", between(1, 4));
        if (maybe(2)) {
            labour.put("shopCrew", between(1, 3));
        }
        if (maybe(2)) {
            labour.put("tandemEfficiency", decimal(50, 100, 2));
        }
        if (maybe(2)) {
            labour.put("allowance", maybe(2) ? Map.of("onJobTime", decimal(0, 60, 2)) : Map.of("onWorkingDay", decimal(0, 50, 2)));
        }
        labour.put("shift", time(between(420, 600)));
        if (maybe(2)) {
            labour.put("travel", Map.of("perDay", time(between(0, 90)), "withinShift", random.nextBoolean()));
        }
        if (maybe(3)) {
            labour.put("without", Arrays.asList(pick("wash", "heat-roll", "edge")));
        }
        if (maybe(3)) {
            labour.put("paces", Map.of("print", perLength(decimal(1, 90, 1))));
        }
        if (maybe(3)) {
            Map<String, Object> task = new LinkedHashMap<>();
            task.put("id", "press");
            task.put("title", "Press the film down");
            task.put("stage", "site");
            task.put("driver", "visible-area");
            task.put("pace", timePerArea(decimal(1, 90, 1)));
            task.put("people", between(1, 2));
            task.put("slowedByHeight", random.nextBoolean());
            labour.put("tasks", Arrays.asList(task));
        }
        if (maybe(3)) {
            labour.put("twoPeopleFrom", length(between(500, 3000)));
        }
        return labour;
    }

    private Map<String, Object> calendar() {
        Map<String, Object> calendar = new LinkedHashMap<>();
        calendar.put("zone", pick("Europe/Vienna", "America/Chicago", "UTC"));
        calendar.put("start", "2027-0" + between(1, 9) + "-" + between(10, 28));
        calendar.put("from", pick("07:00", "08:30"));
        calendar.put("to", pick("15:30", "17:00"));
        if (maybe(2)) {
            calendar.put("days", List.of("monday", "tuesday", "wednesday", "thursday", pick("friday", "saturday")));
        }
        if (maybe(2)) {
            calendar.put("closed", List.of("2027-05-31", "2027-06-0" + between(1, 9)));
        }
        if (maybe(2)) {
            calendar.put("washBefore", time(60 * between(0, 200)));
        }
        if (maybe(2)) {
            calendar.put("cure", time(60 * between(0, 100)));
        }
        if (maybe(2)) {
            calendar.put("acclimatise", time(60 * between(0, 48)));
        }
        return calendar;
    }

    private Map<String, Object> site() {
        Map<String, Object> site = new LinkedHashMap<>();
        site.put("outdoor", random.nextBoolean());
        site.put("substrate", pick("brick", "block", "stone", "concrete", "render", "plaster", "panel"));
        Map<String, Object> answers = new LinkedHashMap<>();
        for (String question : QUESTIONS) {
            if (maybe(2)) {
                answers.put(question, pick("yes", "no", "unknown"));
            }
        }
        site.put("answers", answers);
        if (often()) {
            site.put("air", celsius(between(0, 35)));
            site.put("relativeHumidity", decimal(20, 100, 2));
        }
        if (maybe(2)) {
            site.put("surfaceTemperature", celsius(between(0, 45)));
        }
        return site;
    }

    private List<Object> extras() {
        List<Object> extras = new ArrayList<>();
        int count = between(1, 3);
        for (int i = 0; i < count; i++) {
            Map<String, Object> extra = new LinkedHashMap<>();
            extra.put("kind", pick("hire", "trips", "freight", "disposal", "lump"));
            extra.put("title", "Extra " + (i + 1));
            if (maybe(2)) {
                extra.put("count", between(0, 9));
            }
            extra.put("each", money(0, 40_000));
            extras.add(extra);
        }
        return extras;
    }

    private Map<String, Object> price() {
        Map<String, Object> price = new LinkedHashMap<>();
        switch (random.nextInt(4)) {
            case 0 -> price.put("overhead", Map.of("onDirectCost", decimal(0, 80, 2)));
            case 1 -> price.put("overhead", Map.of("onLabourCost", decimal(0, 150, 2)));
            case 2 -> price.put("overhead", Map.of("perHour", perHour(money(0, 3_000))));
            default -> { }
        }
        if (maybe(2)) {
            price.put("contingency", decimal(0, 30, 2));
        }
        price.put("profit", maybe(2) ? Map.of("margin", decimal(0, 80, 2)) : Map.of("markup", decimal(0, 200, 2)));
        if (maybe(3) && !simple) {
            price.put("minimum", money(0, 500_000));
        }
        if (maybe(3)) {
            price.put("discount", decimal(0, 40, 2));
        }
        if (maybe(2)) {
            price.put("tax", decimal(0, 27, 2));
        }
        price.put("rounding", pick("half-up", "half-even", "up", "down"));
        return price;
    }

    private String length(int sixteenths) {
        return metric
                ? new BigDecimal("1.5875").multiply(BigDecimal.valueOf(sixteenths)).toPlainString() + " mm"
                : new BigDecimal("0.0625").multiply(BigDecimal.valueOf(sixteenths)).toPlainString() + " in";
    }

    /** In tenths of a square foot. */
    private String area(int tenths) {
        BigDecimal feet = BigDecimal.valueOf(tenths).movePointLeft(1);
        return metric ? feet.multiply(FOOT2).toPlainString() + " m2" : feet.toPlainString() + " ft2";
    }

    private String time(int minutes) {
        return metric ? minutes + " min" : 60 * minutes + " s";
    }

    private String celsius(int degrees) {
        return metric ? degrees + " degC" : new BigDecimal("1.8").multiply(BigDecimal.valueOf(degrees)).add(BigDecimal.valueOf(32)) + " degF";
    }

    private String money(int leastCents, int mostCents) {
        return "EUR " + BigDecimal.valueOf(between(leastCents, mostCents)).movePointLeft(2).setScale(2).toPlainString();
    }

    private String perArea(String money) {
        return metric ? money + "/m2" : "EUR " + new BigDecimal(money.substring(4)).multiply(FOOT2).toPlainString() + "/ft2";
    }

    private static String perHour(String money) {
        return money + "/h";
    }

    private String timePerArea(BigDecimal minutes) {
        return metric ? minutes + " min/m2" : minutes.multiply(FOOT2).toPlainString() + " min/ft2";
    }

    private String perLength(BigDecimal minutes) {
        return metric ? minutes + " min/m" : minutes.multiply(new BigDecimal("0.3048")).toPlainString() + " min/ft";
    }

    private BigDecimal decimal(int least, int most, int places) {
        return BigDecimal.valueOf(between(least, most), places);
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private boolean often() {
        return maybe(2) || rich;
    }

    private boolean maybe(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    @SafeVarargs
    private <T> T pick(T... of) {
        return of[random.nextInt(of.length)];
    }
}
