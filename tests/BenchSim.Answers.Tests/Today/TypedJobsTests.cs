using BenchSim.Answers.Today;

namespace BenchSim.Answers.Tests.Today;

/// <summary>Jobs typed back in one line, with thumbs, in the rain.</summary>
public class TypedJobsTests
{
    [Theory]
    [InlineData("1 ok, 2 8, 4 no", "1 done, 2 8, 4 0")]
    [InlineData("1ok,2 8;4 No", "1 done, 2 8, 4 0")]
    [InlineData("12: OK\n3 = 7\r\n5. done", "12 done, 3 7, 5 done")]
    [InlineData(" 7 - yes , , 2) 0,", "7 done, 2 0")]
    [InlineData("", "")]
    [InlineData("  \n ", "")]
    public void A_line_is_read_as_it_is_meant(string line, string meant)
    {
        var typed = TypedJobs.Read(line, 12);
        Assert.Empty(typed.Faults);
        Assert.Equal(meant, string.Join(", ", typed.Jobs.Select(job => $"{job.Number} {job.Count?.ToString(null, null) ?? "done"}")));
    }

    [Theory]
    [InlineData("ok", "\"ok\" does not begin with the number of a job; write it first, such as 1 ok")]
    [InlineData("13 ok", "\"13 ok\" has no job on the page; its numbers go from 1 to 12")]
    [InlineData("0 ok", "\"0 ok\" has no job on the page; its numbers go from 1 to 12")]
    [InlineData("99999999999 ok", "\"99999999999 ok\" has no job on the page; its numbers go from 1 to 12")]
    [InlineData("3", "\"3\" has no answer; write ok, no, or how many, after the number")]
    [InlineData("3 perhaps", "\"3 perhaps\" cannot be read; write ok, no, or a whole number up to 100000 after the number of the job")]
    [InlineData("3 -5", "\"3 -5\" cannot be read; write ok, no, or a whole number up to 100000 after the number of the job")]
    [InlineData("3.5", "\"3.5\" cannot be read; write ok, no, or a whole number up to 100000 after the number of the job")]
    [InlineData("3 100001", "\"3 100001\" cannot be read; write ok, no, or a whole number up to 100000 after the number of the job")]
    [InlineData("3 ok, 3 no", "\"3 no\" answers job 3 a second time; leave one of the two out")]
    public void What_cannot_be_meant_is_a_fault_that_says_what_would_be_right(string line, string fault) =>
        Assert.Equal(fault, Assert.Single(TypedJobs.Read(line, 12).Faults));

    [Fact]
    public void All_faults_come_at_once_and_the_good_answers_are_kept()
    {
        var typed = TypedJobs.Read("1 ok, x, 44 no, 2 3", 12);
        Assert.Equal((2, 2), (typed.Jobs.Length, typed.Faults.Length));
        Assert.Equal("\"1 ok\" answers a job, and the page has none", Assert.Single(TypedJobs.Read("1 ok", 0).Faults));
    }

    // Seed 11, 10,000 lines of the letters that such lines are made of: nothing is thrown, and no number is outside the page.
    [Fact]
    public void Nothing_that_can_be_typed_breaks_it()
    {
        const string Letters = "0123456789 ,;okno:=.)-x\n\tø٣";
        var random = new Random(11);
        for (var line = 0; line < 10_000; line++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(24)).Select(_ => Letters[random.Next(Letters.Length)]));
            Assert.All(TypedJobs.Read(text, 9).Jobs, job => Assert.InRange(job.Number, 1, 9));
        }
    }
}
