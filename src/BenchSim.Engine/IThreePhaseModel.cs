namespace BenchSim.Engine;

/// <summary>What the clock plays: what is bound to happen, and what may.</summary>
public interface IThreePhaseModel
{
    /// <summary>Phase B: something that was scheduled happens. May schedule more, now or later.</summary>
    /// <param name="happening">What happens, and to whom.</param>
    void Happen(BoundEvent happening);

    /// <summary>
    /// Phase C: tries each conditional activity in the model's stated order, once all that is bound to happen at this time has. May
    /// schedule more, and may stop the clock.
    /// </summary>
    void Attempt();
}
