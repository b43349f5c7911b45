using Wainwright.Fitout;

namespace Wainwright.Survey.Retention;

/// <summary>What one fixing of each joint of a van is worth; worked out once, when first asked for.</summary>
internal sealed class JointWorths
{
    private readonly Dictionary<JointId, Joint> joints;
    private readonly Dictionary<PartId, Part> parts;
    private readonly Dictionary<JointId, FixingWorth> known = [];
    private readonly Vehicle vehicle;

    public JointWorths(Job job)
    {
        vehicle = job.Vehicle;
        joints = job.Joints.GroupBy(j => j.Id).ToDictionary(g => g.Key, g => g.First());
        parts = job.Parts.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First());
    }

    public FixingWorth this[JointId id]
    {
        get
        {
            if (known.TryGetValue(id, out var worth)) return worth;
            var joint = joints[id];
            return known[id] = JointWorth.Of(joint, parts[joint.Part], joint.To is { } to ? parts.GetValueOrDefault(to) : null, vehicle);
        }
    }

    public Joint Joint(JointId id) => joints[id];
}
