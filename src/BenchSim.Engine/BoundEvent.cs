namespace BenchSim.Engine;

/// <summary>Something that is bound to happen at its time, whatever else happens.</summary>
/// <param name="Kind">What happens, 0 to 32,767. At one time the lower kind happens first; of one kind, what was scheduled first.</param>
/// <param name="Subject">To whom: a number of the model's own.</param>
public readonly record struct BoundEvent(int Kind, int Subject);
