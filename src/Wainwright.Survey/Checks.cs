using Wainwright.Fitout;
using Wainwright.Survey.Combustion;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Electrics;
using Wainwright.Survey.Retention;
using Wainwright.Survey.Weight;

namespace Wainwright.Survey;

/// <summary>Every check, in order of danger. Faces, reports and the command line walk this list; nothing else to register.</summary>
public static class Checks
{
    private static readonly Func<Job, DateOnly, IEnumerable<Check>>[] InOrderOfDanger =
    [
        (job, _) => BurnerAirComesFromOutside.Of(job),
        AlarmIsInDate.Of,
        (job, _) => GasDropsOut.Of(job),
        GasHoseIsInDate.Of,
        (job, _) => OutletNearWaterIsProtected.Of(job),
        (job, _) => ResidualCurrentTripsInTime.Of(job),
        (job, _) => InsulationHolds.Of(job),
        (job, _) => NothingLeaksOnMains.Of(job),
        (job, _) => FuseGuardsItsCable.Of(job),
        (job, _) => OverheadPartIsHeld.Of(job),
        (job, _) => HeldOnTheRoad.Of(job),
        (job, _) => PullLeavesNoSet.Of(job),
        (job, _) => MovingThingsStayShut.Of(job),
        (job, _) => ShelfGoodsStay.Of(job),
        (job, _) => VanStaysWithinItsPlate.Of(job),
        (job, _) => CirculationAirIsEnough.Of(job),
        (job, _) => BurnerAirPipeIsOpen.Of(job),
        (job, _) => HeaterKeepsItsVolts.Of(job),
        (job, _) => LiftedLidStaysUp.Of(job),
        (job, _) => TankFittingsStayDry.Of(job),
        (job, _) => OpenedBoardIsDry.Of(job),
        ExtinguisherIsInDate.Of,
        (job, _) => SidesAreLevel.Of(job),
        (job, _) => MassSheetAgrees.Of(job),
    ];

    /// <summary>Every check of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="today">The day it is judged on: alarms and hoses run out.</param>
    public static IReadOnlyList<Check> All(Job job, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. InOrderOfDanger.SelectMany(check => check(job, today))];
    }
}
