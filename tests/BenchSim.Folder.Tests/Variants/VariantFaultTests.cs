namespace BenchSim.Folder.Tests.Variants;

/// <summary>What is wrong in a variant is said with its place in the variant's file.</summary>
public class VariantFaultTests
{
    public static TheoryData<string, string> Faults =>
        new()
        {
            {
                "include = \"v\"\n",
                "variants/v.toml:1:1: there is no key \"include\" in a variant: a variant lies on the base folder alone, never on a "
                    + "variant; copy the lines you need from the other file"
            },
            {
                "based_on = \"v.toml\"\n",
                "variants/v.toml:1:1: there is no key \"based_on\" in a variant: a variant lies on the base folder alone, never on "
                    + "a variant; copy the lines you need from the other file"
            },
            { "[ruels]\nlate_days = 3\n", "variants/v.toml:1:2: there is no key \"ruels\" in a variant; did you mean \"rules\"" },
            {
                "places = 3\n",
                "variants/v.toml:1:1: there is no key \"places\" in a variant; it belongs in [[space]] or changes of [[space]]"
            },
            {
                "[[space]]\nid = \"mats\"\nplases = 12\n",
                "variants/v.toml:3:1: there is no key \"plases\" in [[space]]; did you mean \"places\""
            },
            {
                "[[space]]\nid = \"mats\"\nplaces = -1\n",
                "variants/v.toml:3:10: places is -1, and cannot be negative; write a whole number, from 0 to 100000"
            },
            {
                "[[space]]\nid = \"new\"\nkind = \"bench\"\n",
                "variants/v.toml:1:1: [[space]] has no places; add a line such as places = 40, or length and width"
            },
            { "replan = \"perhaps\"\n", "variants/v.toml:1:10: replan is \"perhaps\"; write \"yes\" or \"no\"" },
            { "remove = [\"matz\"]\n", "variants/v.toml:1:11: there is no house or space \"matz\" to remove; did you mean \"mats\"" },
            {
                "remove = [\"mats\", \"table\"]\n",
                "variants/v.toml:1:11: there is no hardening table, so no tray can reach the field; add a [[space]] with kind = "
                    + "\"table\" and its places"
            },
            {
                "remove = [\"mats\", \"main\"]\n",
                "variants/v.toml:1:19: the house \"main\" is removed, but the space \"bench\" is in it; remove that space too, or "
                    + "put it into another house"
            },
            { "[crops.tomatoe]\npot_up_days = 3\n", "variants/v.toml:1:1: there is no crop \"tomatoe\"; did you mean \"tomato\"" },
            {
                "[crops.tomato]\npot_up_dais = 3\n",
                "variants/v.toml:2:1: there is no key \"pot_up_dais\" in [crops.tomato]; did you mean \"pot_up_days\""
            },
            {
                "[crops.tomato]\nharden_above = \"11 C\"\n",
                "variants/v.toml:2:1: there is no key \"harden_above\" in [crops.tomato]; write table_above, the forecast nights that let "
                    + "trays go out, and damage_below, the night below which they are carried in"
            },
            {
                "[crops.tomato]\nflat_discard_days = -3\n",
                "variants/v.toml:2:21: flat_discard_days is -3, and cannot be negative; write a whole number, from 1 to 365"
            },
            {
                "[[plan]]\nbatch = \"earli\"\nplants = 3\n",
                "variants/v.toml:2:9: no line of the plan has the batch \"earli\"; did you mean \"early\""
            },
            {
                "[[plan]]\nbatch = \"heads-2\"\nplants = 3\n",
                "variants/v.toml:2:9: no line of the plan has the batch \"heads-2\"; it is a succession of \"heads\": all "
                    + "successions of a line change together"
            },
            {
                "[[plan]]\nplants = 3\n",
                "variants/v.toml:1:1: this [[plan]] chooses no lines; add batch = \"id\", batch = \"prefix*\" or crop = \"tomato\""
            },
            {
                "[[plan]]\nbatch = [\"early\", \"late\"]\nplants = 3\n",
                "variants/v.toml:2:9: batch names nothing; write one name in quotation marks, and add a [[plan]] for each further one"
            },
            {
                "[[plan]]\nbatch = \"early\"\n",
                "variants/v.toml:1:1: this [[plan]] changes nothing; add a column of plan.csv with its new value, shift_days = 7, "
                    + "or drop = true"
            },
            {
                "[[plan]]\nbatch = \"early\"\nid = \"x\"\nplants = 3\n",
                "variants/v.toml:3:1: there is no key \"id\" in [[plan]] of a variant: what is drawn for a batch depends on its name; "
                    + "choose lines with batch = \"id\""
            },
            {
                "[[plan]]\nbatch = \"early\"\nshift_days = 1.5\n",
                "variants/v.toml:3:14: shift_days is \"1.5\"; write whole days, -365 to 365; a minus means earlier"
            },
            {
                "[[plan]]\nbatch = \"early\"\nshift_days = -200\n",
                "variants/v.toml:3:14: sow is 2026-08-13, outside the season; the season runs from 2027-01-18 to 2027-06-30"
            },
            {
                "[[plan]]\nbatch = \"*\"\ndrop = true\n",
                "variants/v.toml:1:1: this drops the last line of the plan; keep one line at least"
            },
            {
                "[play]\nseed = 3\n",
                "variants/v.toml:2:1: seed cannot change in a variant: every variant is played in the same seasons; take the line out, "
                    + "or change it in site.toml"
            },
            {
                "[rules]\nlate_days = 10\n",
                "variants/v.toml:2:1: late_days cannot change in a variant: base and variants are judged alike; take the line out, "
                    + "or change it in site.toml"
            },
            {
                "[rules]\nservice_goal = \"50 %\"\n",
                "variants/v.toml:2:1: service_goal cannot change in a variant: base and variants are judged alike; take the line out, "
                    + "or change it in site.toml"
            },
            {
                "[crops.tomato]\nhold_days = 30\n",
                "variants/v.toml:2:1: hold_days cannot change in a variant: base and variants are judged alike; take the line out, "
                    + "or change it in crops.csv"
            },
            {
                "[season]\nopens = 2027-02-01\n",
                "variants/v.toml:2:1: opens cannot change in a variant: every variant is played from the same first day; take the "
                    + "line out, or change it in site.toml"
            },
        };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_stands_in_the_variant(string variant, string fault)
    {
        using var folder = VariantTests.Folder(variant);
        Assert.Equal([fault], ScenarioFolder.ReadVariant(folder.Path, "v").Faults.Select(each => each.ToString()).ToArray());
    }

    [Fact]
    public void A_space_that_crops_csv_lists_cannot_be_removed()
    {
        using var folder = VariantTests.Folder("remove = [\"mats\"]\n");
        folder.Write("crops.csv", "id,mats\ntomato,mats\n");
        var reading = ScenarioFolder.ReadVariant(folder.Path, "v");
        Assert.Null(reading.Scenario);
        Assert.Equal(
            "variants/v.toml:1:11: the space \"mats\" is removed, but crops.csv lists it for tomato; give these crops other benches "
                + "and mats in [crops], or keep the space",
            Assert.Single(reading.Faults).ToString()
        );

        // With another list in the variant nothing is in its way.
        folder.Write("variants/v.toml", "remove = [\"mats\"]\n[crops.tomato]\nmats = \"none\"\n");
        Assert.Empty(ScenarioFolder.ReadVariant(folder.Path, "v").Faults);
    }

    [Theory]
    [InlineData("other", "variants:0:0: there is no variant \"other\"; the variants of this folder are v")]
    [InlineData("v.toml", "variants:0:0: there is no variant \"v.toml\"; did you mean \"v\"")]
    [InlineData("../site", "variants:0:0: there is no variant \"../site\"; the variants of this folder are v")]
    public void A_variant_that_is_not_there_is_a_fault(string name, string fault)
    {
        using var folder = VariantTests.Folder("");
        Assert.Equal(fault, Assert.Single(ScenarioFolder.ReadVariant(folder.Path, name).Faults).ToString());
    }
}
