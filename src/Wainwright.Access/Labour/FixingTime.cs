using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Minutes to undo and to do up fixings of one type, and where the figures come from.</summary>
/// <param name="Type">Type of fixing.</param>
/// <param name="OutSetUp">Once per joint: find it, fetch the tool, bag and label what comes off [min].</param>
/// <param name="OutEach">Undo one [min].</param>
/// <param name="BackSetUp">Once per joint: clean, line up, fetch [min].</param>
/// <param name="BackEach">Do one up again, or set a new one [min].</param>
/// <param name="Origin">Published source, or <c>estimate</c> and of what.</param>
public sealed record FixingTime(FixingType Type, double OutSetUp, double OutEach, double BackSetUp, double BackEach, string Origin);
