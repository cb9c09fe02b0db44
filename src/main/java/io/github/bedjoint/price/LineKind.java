package io.github.bedjoint.price;

/** What a line pays for; the order is the order on the sheet. */
public enum LineKind {
    /** Film from rolls opened. */
    FILM("Film"),
    /** Laminate. */
    LAMINATE("Laminate"),
    /** Ink. */
    INK("Ink"),
    /** Cleaner, primer, blades, tape, edge sealer. */
    CONSUMABLES("Consumables"),
    /** Hours in the print room. */
    PRODUCTION_LABOUR("Production labour"),
    /** Hours on site. */
    SITE_LABOUR("Site labour"),
    /** Scaffold, lift, tools hired. */
    HIRE("Hire"),
    /** Travel. */
    TRIPS("Trips"),
    /** Freight of material. */
    FREIGHT("Freight"),
    /** Disposal of liner and scrap. */
    DISPOSAL("Disposal"),
    /** A lump sum without logic: permit, traffic protection, supervision, insurance, parking. */
    LUMP("Lump sum");

    private final String title;

    LineKind(String title) {
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
}
