using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Planning;

/// <summary>What a variant leaves alone keeps the base's dates and numbers; what it changes is planned anew.</summary>
public class VariantPlannerTests
{
    private static readonly Scenario s_site = SmallSite.Scenario(
        [SmallSite.Mat(4), SmallSite.Bench(20), SmallSite.Table(20)],
        [SmallSite.Batch("a", 100, SmallSite.Monday), SmallSite.Batch("b", 100, SmallSite.Monday)]
    );

    private static readonly SeasonPlan s_base = SmallSite.Plan(s_site);

    [Fact]
    public void A_colder_house_moves_no_planned_date()
    {
        var colder = s_site with { Houses = [s_site.Houses[0] with { NightC = 15, DayC = 15, VentC = 15 }] };
        Assert.NotEqual(Dates(s_base.Batches[0]), Dates(SmallSite.Plan(colder).Batches[0]));
        var plan = Make(colder);
        Assert.Equal(s_base.Batches.Select(Dates), plan.Batches.Select(Dates));
        Assert.Equal(s_base.Days, plan.Days);
        Assert.Same(colder, plan.Scenario);
    }

    [Fact]
    public void A_changed_batch_is_planned_in_the_variant_and_the_other_is_not()
    {
        // A week later: every date moves by seven days, and so does the last day of the play.
        var later = s_site with { Batches = [s_site.Batches[0] with { Sow = SmallSite.Monday.AddDays(7) }, s_site.Batches[1]] };
        var plan = Make(later);
        Assert.Equal(s_base.Batches[0].SowOn.AddDays(7), plan.Batches[0].SowOn);
        Assert.Equal(s_base.Batches[0].SetOutOn.AddDays(7), plan.Batches[0].SetOutOn);
        Assert.Equal(Dates(s_base.Batches[1]), Dates(plan.Batches[1]));
        Assert.Equal(s_base.Days + 7, plan.Days);
    }

    // In 20 C night and day every date lies a whole number of days after the sowing: a week more of slack is sown a week sooner. A date
    // that follows from the sow date would move with the slack, and is what late is counted from: it stays.
    [Fact]
    public void More_slack_sows_sooner_what_has_a_date_and_moves_nothing_else()
    {
        var wanted = s_base.Batches[0].ReadyOn.AddDays(21);
        var dated = s_site with { Batches = [s_site.Batches[0] with { Sow = null, SetOut = wanted }, s_site.Batches[1]] };
        var below = SmallSite.Plan(dated);
        var plan = VariantPlanner.Make(below, dated with { Rules = dated.Rules with { SlackDays = dated.Rules.SlackDays + 7 } }).Plan!;
        Assert.Equal(below.Batches[0].SowOn.AddDays(-7), plan.Batches[0].SowOn);
        Assert.Equal(below.Batches[0].SetOutOn, plan.Batches[0].SetOutOn);
        Assert.Equal(Dates(below.Batches[1]), Dates(plan.Batches[1]));
    }

    // Growth takes 14 days at 20 C, 10 degrees above its base; at 24 C, 14 above it, 10 days. Coming up, on a mat of its own warmth, and
    // hardening stay. So in the warmer house, worked every day, a sowing with a set-out date alone may be sown 4 days later.
    [Fact]
    public void A_variant_planned_anew_moves_the_sow_dates_that_are_worked_out_and_no_set_out_date()
    {
        var rules = s_site.Rules with { WorkDays = [.. Enum.GetValues<DayOfWeek>()] };
        var wanted = SmallSite.Monday.AddDays(60);
        BatchOrder[] orders =
        [
            s_site.Batches[0] with
            {
                Id = "wanted",
                Sow = null,
                SetOut = wanted,
            },
            s_site.Batches[0] with
            {
                Id = "both",
                Sow = SmallSite.Monday,
                SetOut = wanted,
            },
            s_site.Batches[1],
        ];
        var dated = s_site with { Rules = rules, Batches = [.. orders] };
        var below = SmallSite.Plan(dated);
        var warmer = dated with { Houses = [s_site.Houses[0] with { NightC = 24, DayC = 24, VentC = 24 }] };

        Assert.Equal(below.Batches.Select(Dates), VariantPlanner.Make(below, warmer).Plan!.Batches.Select(Dates));
        var anew = VariantPlanner.Make(below, warmer with { IsPlannedAnew = true }).Plan!;
        Assert.Equal(below.Batches[0].SowOn.AddDays(4), anew.Batches[0].SowOn);
        Assert.Equal(below.Batches.Select(batch => batch.SetOutOn), anew.Batches.Select(batch => batch.SetOutOn));
        Assert.Equal(below.Batches.Skip(1).Select(Dates), anew.Batches.Skip(1).Select(Dates));
    }

    // Wanted on a Friday, which the variant does not work: planned alone it would be set out on Thursday.
    [Fact]
    public void A_promised_date_stays_where_the_variant_works_other_days()
    {
        var friday = SmallSite.Monday.AddDays(60);
        Assert.Equal(DayOfWeek.Friday, friday.DayOfWeek);
        var dated = s_site with { Batches = [s_site.Batches[0] with { Sow = null, SetOut = friday }] };
        var below = SmallSite.Plan(dated);
        var rested = dated with
        {
            IsPlannedAnew = true,
            Rules = dated.Rules with { WorkDays = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday] },
        };
        Assert.Equal(friday.AddDays(-1), SmallSite.Plan(rested).Batches[0].SetOutOn);
        Assert.Equal(friday, VariantPlanner.Make(below, rested).Plan!.Batches[0].SetOutOn);
    }

    [Fact]
    public void New_numbers_keep_the_dates_of_the_base_where_the_variant_could_not_date_them()
    {
        // At 9 C nothing comes up or grows. More assurance takes more trays of seed that comes by halves, on the dates of the base.
        var halves = s_site with { Batches = [.. s_site.Batches.Select(order => order with { Germination = 0.5 })] };
        var below = SmallSite.Plan(halves);
        var colder = halves with
        {
            Houses = [s_site.Houses[0] with { NightC = 9, DayC = 9, VentC = 9 }],
            Spaces = [.. s_site.Spaces.Select(space => space.Kind == SpaceKind.Mat ? space with { MatC = 9 } : space)],
            Rules = s_site.Rules with { StandAssurance = 0.999999 },
        };
        Assert.Null(SeasonPlanner.Make(colder).Plan);
        var made = VariantPlanner.Make(below, colder);
        Assert.Empty(made.Faults);
        Assert.Equal(below.Batches.Select(Dates), made.Plan!.Batches.Select(Dates));
        Assert.Equal(
            below.Batches.Select(batch => batch.RelativeGermination),
            made.Plan.Batches.Select(batch => batch.RelativeGermination)
        );
        Assert.All(made.Plan.Batches.Zip(below.Batches), pair => Assert.True(pair.First.Trays > pair.Second.Trays));
    }

    [Fact]
    public void The_play_goes_on_for_the_longest_stand_after_the_last_date()
    {
        // "a" goes out last, on day 28; the crop of "b" may stand for 60 days in the variant: 28 + 60 + 14 + 1.
        var two = SmallSite.Scenario(
            [SmallSite.Mat(4), SmallSite.Bench(20), SmallSite.Table(20)],
            [SmallSite.Batch("a", 100, SmallSite.Monday.AddDays(7), "one"), SmallSite.Batch("b", 100, SmallSite.Monday, "two")],
            crops: [SmallSite.Crop("one"), SmallSite.Crop("two")]
        );
        var made = VariantPlanner.Make(
            SmallSite.Plan(two),
            two with
            {
                Crops = [two.Crops[0], two.Crops[1] with { DiscardAfterDays = 60 }],
            }
        );
        Assert.Equal(28 + 60 + 14 + 1, made.Plan!.Days);
    }

    [Fact]
    public void What_is_said_of_the_dates_of_a_changed_sowing_is_said_in_the_variant()
    {
        // Sown on the 5th, wanted on the 24th: ready on the 25th at the earliest.
        var late = s_site with
        {
            Batches = [s_site.Batches[0] with { Sow = new(2027, 3, 5), SetOut = new(2027, 3, 24) }, s_site.Batches[1]],
        };
        var warnings = VariantPlanner.Make(s_base, late).Plan!.Warnings.Select(warning => warning.What).ToArray();
        Assert.Contains(
            "ready on 2027-03-25 at the earliest, after the wanted 2027-03-24",
            Assert.Single(warnings, what => what.Contains("at the earliest", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.Equal(warnings.Length, warnings.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_slower_crop_changes_its_dates_and_another_bench_does_not()
    {
        var crop = s_site.Crops[0];
        Assert.True(
            Make(s_site with { Crops = [crop with { GrowthDays = crop.GrowthDays + 7 }] }).Batches[0].ReadyOn > s_base.Batches[0].ReadyOn
        );

        ImmutableArray<Space> spaces = [.. s_site.Spaces, SmallSite.Bench(5, "other")];
        var plan = Make(s_site with { Spaces = spaces, Crops = [crop with { Benches = ["other", "bench"] }] });
        Assert.Equal(s_base.Batches.Select(Dates), plan.Batches.Select(Dates));
        Assert.Equal([3, 1], plan.Batches[0].Benches.ToArray());
    }

    [Fact]
    public void Spaces_are_found_by_their_place_in_the_variant()
    {
        ImmutableArray<Space> spaces = [SmallSite.Bench(5, "first"), .. s_site.Spaces];
        var plan = Make(s_site with { Spaces = spaces });
        Assert.Equal([1], plan.Batches[0].Mats.ToArray());
        Assert.Equal([0, 2], plan.Batches[0].Benches.ToArray());
        Assert.Equal([3], plan.Batches[0].Tables.ToArray());
    }

    [Fact]
    public void A_tolerance_for_levelling_changes_nothing_planned()
    {
        var colder = s_site with
        {
            Houses = [s_site.Houses[0] with { NightC = 15, DayC = 15, VentC = 15 }],
            Batches = [.. s_site.Batches.Select(order => order with { EarlierDays = 3, LaterDays = 5 })],
        };
        Assert.Equal(s_base.Batches.Select(Dates), Make(colder).Batches.Select(Dates));
    }

    [Fact]
    public void Another_assurance_changes_trays_and_no_dates()
    {
        // Half the seed comes up: a surer stand takes more trays.
        var site = s_site with { Batches = [.. s_site.Batches.Select(order => order with { Germination = 0.5 })] };
        var plan = SmallSite.Plan(site);
        var surer = VariantPlanner.Make(plan, site with { Rules = site.Rules with { StandAssurance = 0.999 } }).Plan!;
        Assert.True(surer.Batches[0].Trays > plan.Batches[0].Trays);
        Assert.Equal(plan.Batches.Select(Dates), surer.Batches.Select(Dates));
    }

    [Fact]
    public void A_changed_batch_that_cannot_be_planned_is_a_fault()
    {
        var early = s_site with
        {
            Batches = [s_site.Batches[0] with { Sow = null, SetOut = SmallSite.Monday.AddDays(3) }, s_site.Batches[1]],
        };
        var made = VariantPlanner.Make(s_base, early);
        Assert.Null(made.Plan);
        Assert.Contains("before the season opens", Assert.Single(made.Faults).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_of_the_variant_that_covers_no_season_is_a_fault()
    {
        // The base plays past the closing of the season on 29 June; its variant, with all of its batches unchanged, brings a record that
        // ends on 1 July.
        var late = SmallSite.Plan(s_site with { Batches = [SmallSite.Batch("a", 100, new DateOnly(2027, 6, 7))] });
        var variant = late.Scenario with
        {
            Weather = new RecordedWeather(
                [.. Enumerable.Range(0, 123).Select(day => new DailyWeather(new DateOnly(2021, 3, 1).AddDays(day), 10, 10, 0))],
                null,
                "record.csv"
            ),
        };
        var made = VariantPlanner.Make(late, variant);
        Assert.Null(made.Plan);
        Assert.Contains("no year of this record covers the whole season", Assert.Single(made.Faults).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_batch_that_the_base_has_not_is_planned_and_the_others_are_kept()
    {
        // A week after "a" of the base in all its dates.
        var plan = Make(s_site with { Batches = [.. s_site.Batches, SmallSite.Batch("c", 100, SmallSite.Monday.AddDays(7))] });
        Assert.Equal(3, plan.Batches.Length);
        Assert.Equal(s_base.Batches[0].SetOutOn.AddDays(7), plan.Batches[2].SetOutOn);
        Assert.Equal(s_base.Batches.Select(Dates), plan.Batches.Take(2).Select(Dates));
    }

    [Fact]
    public void A_variant_is_warned_of_like_a_plan()
    {
        // Each batch of two trays, on a single mat place.
        var plan = Make(s_site with { Spaces = s_site.Spaces.SetItem(0, SmallSite.Mat(1)) });
        Assert.Equal(
            2,
            plan.Warnings.Count(warning => warning.What.Contains("wants 2 mat places and its mats have 1", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void A_variant_opens_its_season_with_the_base() =>
        Assert.Throws<ArgumentException>(() =>
            VariantPlanner.Make(s_base, s_site with { Window = s_site.Window with { Opens = SmallSite.Monday.AddDays(1) } })
        );

    // A longer-lived packet, a dearer one, another note, another line of the plan: what plans nothing changes nothing; what plans does.
    [Fact]
    public void Only_what_plans_a_batch_makes_it_another_batch()
    {
        var colder = s_site with { Houses = [s_site.Houses[0] with { NightC = 15, DayC = 15, VentC = 15 }] };
        Assert.True(IsKept(order => order with { Note = "other", Place = new SourcePlace("plan.csv", 9, 9) }, crop => crop, tray => tray));
        Assert.True(
            IsKept(
                order => order,
                crop => crop with { WeeksMin = 7, WeeksMax = 9, HarvestAfterDays = 40, HarvestDays = 5, MaxMatC = 30, MinNightC = 5 },
                tray => tray
            )
        );
        Assert.True(IsKept(order => order, crop => crop with { GerminationCurve = [.. crop.GerminationCurve] }, tray => tray));
        Assert.False(IsKept(order => order with { SeedsPerCell = 2 }, crop => crop, tray => tray));
        Assert.False(IsKept(order => order with { Grower = "Ben" }, crop => crop, tray => tray));
        Assert.False(IsKept(order => order, crop => crop with { GrowthBaseC = 9 }, tray => tray));
        Assert.False(IsKept(order => order, crop => crop with { GerminationCurve = [new(5, 90), new(20, 90)] }, tray => tray));
        Assert.False(IsKept(order => order, crop => crop, tray => tray with { MediumLitres = 4 }));

        bool IsKept(Func<BatchOrder, BatchOrder> order, Func<Crop, Crop> crop, Func<TrayType, TrayType> tray)
        {
            var plan = Make(
                colder with
                {
                    Batches = [order(colder.Batches[0]), colder.Batches[1]],
                    Crops = [crop(colder.Crops[0])],
                    TrayTypes = [tray(colder.TrayTypes[0]), .. colder.TrayTypes.Skip(1)],
                }
            );
            return Dates(plan.Batches[0]) == Dates(s_base.Batches[0]);
        }
    }

    // Of a batch potted up, its flat belongs to it.
    [Fact]
    public void Another_flat_makes_another_batch_and_the_same_does_not()
    {
        var site = s_site with { Batches = [SmallSite.PotUpBatch("p", 120, SmallSite.Monday)] };
        var plan = SmallSite.Plan(site);
        var colder = site with { Houses = [site.Houses[0] with { NightC = 15, DayC = 15, VentC = 15 }] };
        Assert.Equal(Dates(plan.Batches[0]), Dates(VariantPlanner.Make(plan, colder).Plan!.Batches[0]));
        ImmutableArray<TrayType> trays = [.. colder.TrayTypes.Select(tray => tray.IsFlat ? tray with { PlacesEach = 2 } : tray)];
        Assert.NotEqual(Dates(plan.Batches[0]), Dates(VariantPlanner.Make(plan, colder with { TrayTypes = trays }).Plan!.Batches[0]));
    }

    // Each of the rules that the numbers rest on works them out anew and leaves the dates.
    [Fact]
    public void Another_test_size_or_storage_changes_numbers_and_no_dates()
    {
        var site = s_site with
        {
            Crops = [SmallSite.Crop("lettuce")],
            Batches =
            [
                SmallSite.Batch("a", 100, SmallSite.Monday, "lettuce") with
                {
                    Germination = 0.8,
                    TestedOn = SmallSite.Monday.AddDays(-100),
                },
            ],
        };
        var plan = SmallSite.Plan(site);
        foreach (
            var rules in new[]
            {
                site.Rules with
                {
                    GerminationSample = 5,
                },
                site.Rules with
                {
                    SeedStorage = new BenchSim.Season.Seed.SeedStorage(10, 20),
                },
            }
        )
        {
            var changed = VariantPlanner
                .Make(plan, site with { Rules = rules, Houses = [site.Houses[0] with { NightC = 15, DayC = 15, VentC = 15 }] })
                .Plan!;
            Assert.Equal(Dates(plan.Batches[0]), Dates(changed.Batches[0]));
            Assert.True(changed.Batches[0].Trays > plan.Batches[0].Trays);
            Assert.Equal(changed.Batches[0].Trays * 50, changed.Batches[0].Seeds);
            Assert.NotEqual(plan.Batches[0].StandChance, changed.Batches[0].StandChance);
        }
    }

    // Without a place on a mat the sowing starts on the bench once it has waited: in the variant on day 8. By the base's three days it had
    // to be sown by day 4; by the variant's own rule day 9 would be soon enough.
    [Fact]
    public void A_sowing_waits_as_the_variant_has_it_and_is_judged_by_the_base()
    {
        var site = SmallSite.Scenario(
            [SmallSite.Mat(0), SmallSite.Bench(20), SmallSite.Table(20)],
            [SmallSite.Batch("a", 100, SmallSite.Monday)]
        );
        var patient = site with { Rules = site.Rules with { SowWaitDays = 8 } };
        var made = VariantPlanner.Make(SmallSite.Plan(site), patient).Plan!;
        Assert.Equal((3, 8), (made.SownInTimeDays, made.Scenario.Rules.SowWaitDays));
        Assert.Equal((8, false), Sown(made));
        Assert.Equal((8, true), Sown(SmallSite.Plan(patient)));
        Assert.Equal((3, true), Sown(SmallSite.Plan(site)));
    }

    [Fact]
    public void A_crop_is_over_held_after_the_days_of_the_base_whatever_relative_lends_its_values()
    {
        var crop = s_site.Crops[0];
        Assert.Equal(crop.HoldDays, Make(s_site with { Crops = [crop with { HoldDays = 20 }] }).Batches[0].Crop.HoldDays);
    }

    private static (int Last, bool InTime) Sown(SeasonPlan plan)
    {
        var result = new SeasonResult();
        new SeasonPlayer(plan, 7).Play(0, PlaceLimits.AsGiven, result);
        return (result.Batches[0].SownLast, result.SownInTime);
    }

    private static SeasonPlan Make(Scenario variant)
    {
        var made = VariantPlanner.Make(s_base, variant);
        Assert.Empty(made.Faults);
        return made.Plan!;
    }

    private static (DateOnly, DateOnly, DateOnly?, DateOnly, DateOnly, DateOnly) Dates(BatchPlan batch) =>
        (batch.SowOn, batch.EmergeOn, batch.OffMatOn, batch.TableOn, batch.ReadyOn, batch.SetOutOn);
}
