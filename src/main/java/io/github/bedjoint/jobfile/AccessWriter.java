package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.SiteAccess;
import io.github.bedjoint.job.SiteAccess.AccessHire;
import io.github.bedjoint.labour.HeightBands;
import io.github.bedjoint.survey.Access;
import java.io.IOException;
import java.util.Map;

/** Writes height bands, factors that are not the usual ones, and what is hired. */
final class AccessWriter {
    private final JsonOut out;

    AccessWriter(JsonOut out) {
        this.out = out;
    }

    void write(SiteAccess access) throws IOException {
        if (access.heights().isPresent()) {
            out.object("heights", () -> heights(access.heights().get()));
        }
        if (!access.hires().isEmpty()) {
            out.array("hire", () -> {
                for (AccessHire hire : access.hires()) {
                    out.item(() -> hire(hire));
                }
            });
        }
    }

    private void heights(HeightBands bands) throws IOException {
        out.array("bands", () -> {
            for (Map.Entry<Double, Access> band : bands.bands().entrySet()) {
                if (band.getKey() != Double.MAX_VALUE) {
                    out.item(() -> {
                        out.sized("upTo", band.getKey(), "m");
                        out.word("access", band.getValue());
                    });
                }
            }
        });
        out.word("above", bands.bands().get(Double.MAX_VALUE));
        if (!bands.source().equals(HeightBands.defaults().source())) {
            out.object("factors", () -> {
                for (Access access : Access.values()) {
                    out.number(Fields.word(access), bands.factor(access));
                }
            });
        }
    }

    private void hire(AccessHire wanted) throws IOException {
        out.word("access", wanted.access());
        out.field("name", wanted.hire().name());
        out.field("delivery", wanted.hire().delivery().toString());
        out.field("dayRate", wanted.hire().dayRate().toString());
        out.count("leastDays", wanted.hire().leastDays());
        out.count("items", wanted.items());
        out.flag("alsoForWashing", wanted.alsoForWashing());
    }
}
