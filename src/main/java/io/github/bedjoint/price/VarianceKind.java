package io.github.bedjoint.price;

/** Why a job cost more or less than estimated, as standard costing tells it apart. */
public enum VarianceKind {
    /** Film, laminate, ink and consumables were dearer or cheaper. */
    MATERIAL_PRICE("Material price"),
    /** More or less of them was used. */
    MATERIAL_USAGE("Material usage"),
    /** Hours were dearer or cheaper. */
    LABOUR_RATE("Labour rate"),
    /** More or fewer hours were needed. */
    LABOUR_EFFICIENCY("Labour efficiency"),
    /** Hire, trips, freight, disposal and lump sums were dearer or cheaper. */
    OTHER_PRICE("Other price"),
    /** More or less of them was needed, or they were not planned at all. */
    OTHER_USAGE("Other usage"),
    /** Overhead was higher or lower than the work that was done should bear. */
    OVERHEAD_SPENDING("Overhead spending"),
    /** The work that was done bears more or less overhead than the work that was estimated. */
    OVERHEAD_EFFICIENCY("Overhead efficiency"),
    /** The contingency of the estimate, which no longer stands once the costs are known. */
    CONTINGENCY("Contingency not spent as such"),
    /** What rounding of the amounts leaves over. */
    ROUNDING("Rounding");

    private final String title;

    VarianceKind(String title) {
        this.title = title;
    }

    /**
     * The kind in words.
     *
     * @return a heading
     */
    public String title() {
        return title;
    }

    static VarianceKind price(LineKind line) {
        return switch (line) {
            case FILM, LAMINATE, INK, CONSUMABLES -> MATERIAL_PRICE;
            case PRODUCTION_LABOUR, SITE_LABOUR -> LABOUR_RATE;
            default -> OTHER_PRICE;
        };
    }

    static VarianceKind usage(LineKind line) {
        return switch (line) {
            case FILM, LAMINATE, INK, CONSUMABLES -> MATERIAL_USAGE;
            case PRODUCTION_LABOUR, SITE_LABOUR -> LABOUR_EFFICIENCY;
            default -> OTHER_USAGE;
        };
    }
}
