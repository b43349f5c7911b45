using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Scene;

public class DirectionTests
{
    [Fact]
    public void Both_vocabularies_of_direction_mean_the_same_step()
    {
        foreach (var direction in Enum.GetValues<Direction>())
        {
            var heading = (Heading)(int)direction;
            var step = direction.Step();
            double[] along = [step.XMm, step.YMm, step.ZMm];
            Assert.Equal(heading.Sign(), along[heading.Axis()]);
            Assert.Equal((int)direction.Opposite(), (int)heading.Opposite());
        }
    }
}
