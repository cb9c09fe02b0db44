package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.JobBuilder;
import io.github.bedjoint.job.SiteAccess;
import io.github.bedjoint.job.SiteAccess.AccessHire;
import io.github.bedjoint.labour.HeightBands;
import io.github.bedjoint.labour.Hire;
import io.github.bedjoint.survey.Access;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Source;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads how walls are reached: height bands and their factors, how high a wall stands, and what is hired. */
final class AccessReader {
    private static final Source FACTORS = Source.shop("access factors given with the job");

    private AccessReader() {}

    static void read(Fields job, JobBuilder builder, List<JsonNode> walls, CurrencyUnit currency) {
        SiteAccess access = job.with(SiteAccess.plain(), "heights", n -> job.object(n, AccessReader::heights), SiteAccess::withHeights);
        for (JsonNode node : walls) {
            Fields wall = Fields.of(node);
            access = wall.with(access, "bottom", n -> wall.read(n, Read::length), (a, bottom) -> a.withBottom(wall.text("name").strip(), bottom));
        }
        if (job.has("hire")) {
            for (AccessHire hire : job.list("hire", node -> Fields.whole(node, h -> hire(h, currency)))) {
                access = access.withHire(hire);
            }
        }
        builder.access(access);
    }

    private static HeightBands heights(Fields f) {
        HeightBands bands = HeightBands.defaults();
        if (f.has("bands") || f.has("above")) {
            bands = bands.all(f.word("above", Access.class));
        }
        if (f.has("bands")) {
            for (JsonNode node : f.nodes("bands")) {
                HeightBands before = bands;
                bands = Fields.whole(node, b -> band(b, before));
            }
        }
        HeightBands known = bands;
        return f.has("factors") ? f.object("factors", n -> factors(n, known)) : bands;
    }

    private static HeightBands band(Fields f, HeightBands before) {
        Access access = f.word("access", Access.class);
        f.get("upTo");
        return f.with(before, "upTo", n -> f.read(n, Read::length), (bands, height) -> bands.upTo(height, access));
    }

    private static HeightBands factors(Fields f, HeightBands known) {
        HeightBands bands = known;
        for (Access access : Access.values()) {
            bands = f.with(bands, Fields.word(access), f::number, (b, factor) -> b.withFactor(access, factor, FACTORS));
        }
        return bands;
    }

    /** A price of one; as the rate of a line it is made here once, so that one too high is refused under its own path. */
    private static Money each(Fields f, String name, CurrencyUnit currency) {
        Money price = f.priced(name, currency, Read::money);
        Fields.under(f.get(name), () -> PriceRate.of(price, ShopUnits.ONE));
        return price;
    }

    private static AccessHire hire(Fields f, CurrencyUnit currency) {
        Hire hire = new Hire(
                f.read("name", text -> Door.text("name", text)),
                each(f, "delivery", currency),
                each(f, "dayRate", currency),
                f.has("leastDays") ? f.count("leastDays") : 1);
        return new AccessHire(
                f.word("access", Access.class), hire, f.has("items") ? f.count("items") : 1, !f.has("alsoForWashing") || f.flag("alsoForWashing"));
    }
}
