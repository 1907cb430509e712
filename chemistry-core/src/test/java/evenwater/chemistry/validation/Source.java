package evenwater.chemistry.validation;

/** Who published the figures of the checks; the page lists those that are used. */
enum Source {
    ARITHMETIC(
            "arithmetic", "Worked from exact definitions and the atomic weights of IUPAC 2021, without the library."),
    ASAE_S339(
            "ASAE S339",
            "American Society of Agricultural Engineers, S339, Uniform Classification for Water Hardness; "
                    + "the bounds were read in public pages of the softening trade."),
    ASTM_D1141(
            "ASTM D1141", "ASTM D1141-98, Standard Practice for the Preparation of Substitute Ocean Water, Table 1."),
    AQUARISTS("aquarists", "Usage of aquarists, without a single source."),
    CALIFORNIA(
            "California code",
            "California Health and Safety Code, sections 116785 and 116790 (read in a public copy)."),
    CARRIER_1965(
            "Carrier 1965",
            "Carrier Air Conditioning Company, Handbook of Air Conditioning System Design, McGraw-Hill, New York 1965; "
                    + "the example is in wide circulation."),
    CRC(
            "CRC Handbook",
            "CRC Handbook of Chemistry and Physics, Physical Constants of Inorganic Compounds and Aqueous Solubility."),
    CRC_CONDUCTIVITY(
            "CRC Handbook, conductivity",
            "CRC Handbook of Chemistry and Physics, P. Vanýsek, Equivalent Conductivity of Electrolytes in Aqueous Solution, mostly after "
                    + "T. Shedlovsky, J. Am. Chem. Soc. 54 (1932) 1411; NaCl was read in a source that cites the table."),
    DAVIS_CORNWELL(
            "Davis and Cornwell",
            "M. L. Davis and D. A. Cornwell, Introduction to Environmental Engineering, "
                    + "example on the bypass of a household softener."),
    DIN_38409_6("DIN 38409-6", "DIN 38409-6 (1986), hardness of a water, with its conversions between scales."),
    EMERSON_1975(
            "Emerson et al. 1975",
            "K. Emerson, R. C. Russo, R. E. Lund and R. V. Thurston, Aqueous ammonia equilibrium calculations: effect of pH and "
                    + "temperature, J. Fish. Res. Board Can. 32 (1975) 2379-2383; the formula was read in public copies that cite it, the table is "
                    + "from memory."),
    EPA_1995(
            "EPA 1995",
            "US EPA, 1995 Updates: Water Quality Criteria Documents for the Protection of Aquatic Life in Ambient Water, "
                    + "EPA-820-B-96-001, and the tables of national recommended criteria that follow it."),
    EPA_1999(
            "EPA 1999",
            "US EPA, 1999 Update of Ambient Water Quality Criteria for Ammonia, EPA-822-R-99-014; the equations were read "
                    + "in a public rule that quotes them, the tables are from memory."),
    EPA_2002(
            "EPA 2002",
            "US EPA, EPA-821-R-02-012 (2002), Table 7, moderately hard reconstituted water; "
                    + "the recipe was read in a public page, the ranges are from memory."),
    EPA_2013(
            "EPA 2013",
            "US EPA, Aquatic Life Ambient Water Quality Criteria for Ammonia - Freshwater 2013, EPA-822-R-13-001."),
    FERTILISER_TRADE(
            "fertiliser trade",
            "Factors between elements and oxides that the fertiliser trade prints, " + "without a single source."),
    HEM_1985(
            "Hem 1985",
            "J. D. Hem, Study and Interpretation of the Chemical Characteristics of Natural Water, "
                    + "USGS Water-Supply Paper 2254, 1985; factors from Table 9."),
    ISO_7888(
            "ISO 7888",
            "ISO 7888:1985 (EN 27888), Water quality, Determination of electrical conductivity, "
                    + "factors for natural waters; those of whole degrees were read in two manuals that reprint the table."),
    IUPAC_2005(
            "IUPAC 2005",
            "M. E. Wieser, Atomic weights of the elements 2005, Pure Appl. Chem. 78 (2006) 2051-2066; "
                    + "the weights behind most molar masses in print before 2011 (from memory)."),
    IUPAC_2021(
            "IUPAC 2021",
            "T. Prohaska et al., Standard atomic weights of the elements 2021, Pure Appl. Chem. 94 (2022) "
                    + "573-600, Table 2, abridged values (compared with two independent copies that cite it)."),
    JCGM_101(
            "JCGM 101",
            "JCGM 101:2008, Evaluation of measurement data, Supplement 1 to the Guide to the expression of uncertainty in measurement, "
                    + "9.2.3, additive model with rectangular inputs."),
    LABORATORIES("laboratories", "Conversion factors that laboratories and handbooks print, without a single source."),
    LIVINGSTONE_1963(
            "Livingstone 1963",
            "D. A. Livingstone, Chemical composition of rivers and lakes, "
                    + "USGS Professional Paper 440-G, 1963: mean composition of the river waters of the world."),
    METCALF_EDDY(
            "Metcalf and Eddy",
            "Metcalf and Eddy, Wastewater Engineering: Treatment and Reuse, 4th ed., McGraw-Hill, New York 2003."),
    METER_MAKERS("meter makers", "Scales that makers of handheld meters print on them, without a single source."),
    MILLERO_2008(
            "Millero 2008",
            "F. J. Millero et al., The composition of Standard Seawater and the definition of the "
                    + "Reference-Composition Salinity Scale, Deep-Sea Res. I 55 (2008) 50-72, Table 4."),
    NIST_SP_811("NIST SP 811", "NIST Special Publication 811 (2008), Appendix B; NIST Handbook 44, Appendix C."),
    NSF_44("NSF/ANSI 44", "NSF/ANSI 44, Residential cation exchange water softeners."),
    POOL_OPERATORS(
            "pool operators",
            "Training problems for pool operators, read in a public page when the checks were written."),
    PRATT_2001(
            "Pratt et al. 2001",
            "K. W. Pratt et al., Molality-based primary standards of electrolytic conductivity, Pure Appl. Chem. 73 (2001) "
                    + "1783-1793; read in the table of the CRC Handbook that follows it."),
    QUAM(
            "QUAM",
            "EURACHEM/CITAC Guide CG 4, Quantifying Uncertainty in Analytical Measurement, 3rd ed., 2012, example A1; the "
                    + "expanded uncertainty is from memory."),
    RESIN_SHEET("resin sheet", "Technical data sheet of a maker of ion-exchange resin (read in a public copy)."),
    RESIN_MAKERS("resin makers", "Tables in the manuals of resin makers, without a single source."),
    SAWYER_MCCARTY(
            "Sawyer and McCarty",
            "C. N. Sawyer and P. L. McCarty, Chemistry for Environmental Engineering; "
                    + "the bounds were read in public pages that quote it."),
    SCALE_PAGE("scale pages", "Public reference pages on the scales of hardness, read when the checks were written."),
    SM_1030(
            "Standard Methods 1030 E",
            "Standard Methods for the Examination of Water and Wastewater, 1030 E, "
                    + "checking correctness of analyses."),
    SM_2320("Standard Methods 2320", "Standard Methods for the Examination of Water and Wastewater, 2320, alkalinity."),
    SM_2340(
            "Standard Methods 2340",
            "Standard Methods for the Examination of Water and Wastewater, 2340, hardness; the "
                    + "factors of calcium and magnesium in 2340 B were read in a public page."),
    SM_2510(
            "Standard Methods 2510",
            "Standard Methods for the Examination of Water and Wastewater, 2510 A, "
                    + "conductivity of a mixed water."),
    SNOEYINK_JENKINS("Snoeyink and Jenkins", "V. L. Snoeyink and D. Jenkins, Water Chemistry, Wiley, 1980."),
    SOFTENING_TRADE("softening trade", "Usage of the softening trade, without a single source."),
    TEOS_10(
            "TEOS-10",
            "IOC, SCOR and IAPSO, The international thermodynamic equation of seawater - 2010, "
                    + "Manuals and Guides 56, UNESCO, 2010."),
    TRADE_PAGE("trade pages", "Public pages of the softening trade, read when the checks were written."),
    UK_1985("UK 1985", "UK Weights and Measures Act 1985, Schedule 1."),
    USDA_60(
            "USDA Handbook 60",
            "US Salinity Laboratory Staff, Diagnosis and Improvement of Saline and Alkali Soils, "
                    + "USDA Agriculture Handbook 60, 1954."),
    BATES_ACREE("Bates and Acree 1943", "R. G. Bates and S. F. Acree, J. Res. Natl. Bur. Stand. 30 (1943) 129."),
    BATES_PINCHING("Bates and Pinching 1950", "R. G. Bates and G. D. Pinching, J. Am. Chem. Soc. 72 (1950) 1393."),
    HARNED_DAVIS("Harned and Davis 1943", "H. S. Harned and R. Davis, J. Am. Chem. Soc. 65 (1943) 2030."),
    HARNED_SCHOLES("Harned and Scholes 1941", "H. S. Harned and S. R. Scholes, J. Am. Chem. Soc. 63 (1941) 1706."),
    ROBINSON_STOKES(
            "Robinson and Stokes 1959",
            "R. A. Robinson and R. H. Stokes, Electrolyte Solutions, 2nd ed., Butterworths, London 1959, appendix."),
    STAPLES_BATES(
            "Staples and Bates 1969",
            "B. R. Staples and R. G. Bates, J. Res. Natl. Bur. Stand. 73A (1969) 37; 25 °C read in the abstract, the others to two "
                    + "decimals in a table of buffers, the third from memory."),
    STUMM_MORGAN(
            "Stumm and Morgan 1996",
            "W. Stumm and J. J. Morgan, Aquatic Chemistry, 3rd ed., Wiley, New York 1996; the calcium of calcite in air between "
                    + "authors scatters by 15 %."),
    USGS_09402500(
            "USGS 09402500",
            "US Geological Survey, National Water Information System, station 09402500 (Colorado River "
                    + "near Grand Canyon), eight samples of 1980 to 2017, residue at 180 °C weighed; read in public data files, public domain."),
    USGS_WSP_1812(
            "Durfor and Becker 1964",
            "C. N. Durfor and E. Becker, USGS Water-Supply Paper 1812, 1964, p. 27; the bounds "
                    + "were read in public pages that quote it."),
    WHO_2011(
            "WHO 2011",
            "World Health Organization, Hardness in Drinking-water, WHO/HSE/WSH/10.01/10, 2011; the bounds were "
                    + "read in a paper that cites it."),
    WRMG_2007("WRMG 2007", "Wasch- und Reinigungsmittelgesetz (German detergents act) of 2007, section 9.");

    private final String label;
    private final String citation;

    Source(String label, String citation) {
        this.label = label;
        this.citation = citation;
    }

    /** Returns the few words that stand in a row. */
    String label() {
        return label;
    }

    /** Tells whether this is a usage that no single source can be named for. */
    boolean isUsage() {
        return citation.endsWith("without a single source.");
    }

    /** Returns author, title, year and place, and how it was consulted. */
    String citation() {
        return citation;
    }
}
