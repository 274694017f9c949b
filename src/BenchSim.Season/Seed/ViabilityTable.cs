using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Seed;

/// <summary>
/// Constants of the seed viability equation by species (tests/Published/data/viability.csv). Where the table has several rows of a
/// species, the one tested over the largest range is taken: constants of its own for temperature before those tested at one temperature,
/// then the first in the table. Rows marked unusable or not to be extrapolated are never taken, so eggplant has none.
/// </summary>
public static class ViabilityTable
{
    /// <summary>All species, in order of name.</summary>
    public static ImmutableArray<ViabilityConstants> Species { get; } =
    [
        Row("Abelmoschus esculentus", 6.659, 2.448, 0.0329, 0.000478, true, "Daniel, Kruse, and Börner, 2013"),
        Row("Allium cepa", 6.975, 3.47, 0.04, 0.000428, false, "Ellis and Roberts, 1981"),
        Row("Beta vulgaris", 9.373, 5.152, 0.0372, 0.000467, false, "Ellis and Hong, 2007"),
        Row("Brassica juncea", 7.768, 4.56, 0.0329, 0.000478, true, "Ellis, Hong, and Roberts, 1989"),
        Row("Brassica napus", 5.65359, 2.49975, 0.04387, 1.438e-05, false, "Alivand, Tavakol Afshari, and Sharifzade, 2013"),
        Row("Capsicum annuum", 7.767, 4.67, 0.0329, 0.000478, true, "Demir, Kenanoglu, Mavi, Celikkol, Hay, and Sariyildiz, 2009"),
        Row(
            "Cicer arietinum",
            8.901,
            4.847,
            0.0329,
            0.000478,
            false,
            "Ellis, Osei-Bonsu, and Roberts, 1982; Dickie, Ellis, Kraak, Ryder, and Tompsett, 1990"
        ),
        Row("Citrullus lanatus", 4.86, 1.59, 0.0329, 0.000478, true, "Demir, Kenanoglu, Hay, Mavi, and Celikkol, 2011"),
        Row("Cucumis melo", 7.299, 3.707, 0.0367, 0.000473, false, "Kuo, 1991"),
        Row("Cucumis sativus", 5.35, 2.03, 0.0329, 0.000478, true, "Demir et al., 2011"),
        Row("Cucurbita pepo", 6.913, 3.604, 0.04, 0.0004, false, "Hong, Linington, and Ellis, 1996"),
        Row("Glycine max", 7.525, 4.086, 0.0329, 0.000478, false, "Ellis et al., 1982; Dickie et al., 1990"),
        Row("Lactuca sativa", 7.938, 5.25, 0.0329, 0.000478, false, "Ellis et al., 1989"),
        Row("Lens culinaris", 4.2919, 1.4928, 0.0244, 0.00014, false, "Moeinzadeh et al., 2018"),
        Row("Oryza sativa", 8.242, 4.345, 0.0307, 0.000501, false, "Ellis et al., 2007"),
        Row("Phaseolus vulgaris", 9.08, 5.2, 0.0057, 0.00079, false, "Wilson and McDonald, 1989"),
        Row("Pisum sativum", 9.858, 5.39, 0.0329, 0.000478, true, "Ellis et al., 1989"),
        Row("Solanum lycopersicum", 6.5017, 3.1807, 0.0324, 0.000431, false, "Kruse, Ghiasi, and Schmohl, 2005"),
        Row("Solanum tuberosum", 7.923, 5.063, 0.0325, 0.000432, false, "Ellis et al., 2007"),
        Row("Vigna radiata", 10.858, 6.27, 0.0329, 0.000478, true, "Ellis et al., 1989"),
        Row("Vigna unguiculata", 9.401, 5.118, 0.0329, 0.000478, false, "Ellis et al., 1982; Dickie et al., 1990"),
        Row("Zea mays", 10.562, 6.366, 0.0332, 0.000577, false, "Ellis et al., 2007"),
    ];

    /// <summary>
    /// Crops of the built-in library that have constants, in order of id; the others keep the germination of their packet. Cabbages and
    /// their kin borrow from rape, leek and scallion from onion, winter squash from summer squash: relatives of the same genus, flagged
    /// as borrowed. Sweet corn takes field corn's constants, its own species; sugary and shrunken kinds are known to age faster (common
    /// practice).
    /// </summary>
    public static ImmutableArray<CropViability> Crops { get; } =
    [
        Own("bean", "Phaseolus vulgaris"),
        Own("beet", "Beta vulgaris"),
        Borrowed("broccoli", "Brassica napus"),
        Borrowed("brussels-sprouts", "Brassica napus"),
        Borrowed("cabbage", "Brassica napus"),
        Borrowed("cauliflower", "Brassica napus"),
        Own("chard", "Beta vulgaris"),
        Borrowed("chinese-cabbage", "Brassica napus"),
        Borrowed("collards", "Brassica napus"),
        Own("cucumber", "Cucumis sativus"),
        Borrowed("kale", "Brassica napus"),
        Borrowed("kohlrabi", "Brassica napus"),
        Borrowed("leek", "Allium cepa"),
        Own("lettuce", "Lactuca sativa"),
        Own("melon", "Cucumis melo"),
        Own("okra", "Abelmoschus esculentus"),
        Own("onion", "Allium cepa"),
        Borrowed("pak-choi", "Brassica napus"),
        Own("pea", "Pisum sativum"),
        Own("pepper", "Capsicum annuum"),
        Own("pumpkin", "Cucurbita pepo"),
        Borrowed("scallion", "Allium cepa"),
        Own("summer-squash", "Cucurbita pepo"),
        Own("sweet-corn", "Zea mays"),
        Own("tomato", "Solanum lycopersicum"),
        Borrowed("turnip", "Brassica napus"),
        Own("watermelon", "Citrullus lanatus"),
        Borrowed("winter-squash", "Cucurbita pepo"),
    ];

    /// <summary>The constants of a species; null when there are none.</summary>
    /// <param name="species">Botanical name.</param>
    public static ViabilityConstants? FindSpecies(string species) =>
        Species.FirstOrDefault(row => string.Equals(row.Species, species, StringComparison.Ordinal));

    /// <summary>The constants of a crop; null when there are none and its seed is taken as its packet says.</summary>
    /// <param name="cropId">Crop id of the built-in library.</param>
    public static CropViability? FindCrop(string cropId) =>
        Crops.FirstOrDefault(row => string.Equals(row.CropId, cropId, StringComparison.Ordinal));

    private static ViabilityConstants Row(string species, double ke, double cw, double ch, double cq, bool oneTemperature, string source) =>
        new(species, ke, cw, ch, cq, oneTemperature, new Provenance(Trust.Seen, source));

    private static CropViability Own(string cropId, string species)
    {
        var constants = FindSpecies(species)!;
        return new CropViability(cropId, constants, constants.Source);
    }

    private static CropViability Borrowed(string cropId, string species)
    {
        var constants = FindSpecies(species)!;
        return new CropViability(cropId, constants, new Provenance(Trust.Borrowed, $"{species}: {constants.Source.Source}"));
    }
}
