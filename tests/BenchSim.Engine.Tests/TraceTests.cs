namespace BenchSim.Engine.Tests;

public class TraceTests
{
    [Fact]
    public void A_trace_reads_as_a_story()
    {
        var trace = new ListTrace();
        var simulation = new Simulation { Trace = trace };
        var mat = new Places(simulation, "mat", 4);
        simulation.Start(Stand(3, 2), "lot", 1);
        simulation.Start(Stand(2, 1.5), "lot", 2, at: 0.5);
        simulation.Start(Stand(1, 1), "lot", 3, at: 1);
        simulation.Run();
        Assert.Equal(
            [
                "day 0  lot 1 starts",
                "day 0  lot 2 is to start on day 0.5",
                "day 0  lot 3 is to start on day 1",
                "day 0  lot 1 takes 3 of mat (3 of 4 held)",
                "day 0  lot 1 waits until day 2: coming up",
                "day 0.5  lot 2 waits for 2 of mat: 3 of 4 held",
                "day 1  lot 3 waits for 1 of mat: 3 of 4 held, 1 in line before it",
                "day 2  lot 1 leaves 3 of mat (0 of 4 held)",
                "day 2  lot 2 takes 2 of mat (2 of 4 held)",
                "day 2  lot 3 takes 1 of mat (3 of 4 held)",
                "day 2  lot 1 ends",
                "day 2  lot 2 waits until day 3.5: coming up",
                "day 2  lot 3 waits until day 3: coming up",
                "day 3  lot 3 leaves 1 of mat (2 of 4 held)",
                "day 3  lot 3 ends",
                "day 3.5  lot 2 leaves 2 of mat (0 of 4 held)",
                "day 3.5  lot 2 ends",
            ],
            trace.Lines
        );

        async Process Stand(int trays, double days)
        {
            await mat.Take(trays);
            await simulation.Delay(days, why: "coming up");
            mat.Leave(trays);
        }
    }

    [Fact]
    public void A_text_trace_writes_a_line_a_step()
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var simulation = new Simulation { Trace = new TextTrace(writer) };
        var field = new Places(simulation, "field", Places.Unlimited);
        simulation.Start(Rest(), "rower");
        simulation.Run();
        Assert.Equal(
            "day 0  rower starts\nday 0  rower takes 2 of field (2 held)\nday 0  rower waits until day 1.25\n"
                + "day 1.25  rower leaves 2 of field (0 held)\nday 1.25  rower ends\n",
            writer.ToString()
        );

        async Process Rest()
        {
            await field.Take(2);
            await simulation.Delay(1.25);
            field.Leave(2);
        }
    }

    [Fact]
    public void A_trace_changes_nothing()
    {
        var plain = new Golden.TandemModel(8, 60, 30, 40);
        var traced = new Golden.TandemModel(8, 60, 30, 40);
        traced.Simulation.Trace = new ListTrace();
        Assert.Equal(plain.Play(1), traced.Play(1));
    }
}
