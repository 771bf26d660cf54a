using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Above;

/// <summary>How the lines of a part of the drawing are set.</summary>
internal enum PlanSide
{
    /// <summary>From its left.</summary>
    Left,

    /// <summary>Each in its middle.</summary>
    Middle,

    /// <summary>From its right, as in a mirror: the right of the car looks as its left.</summary>
    Right,
}

/// <summary>A part of the drawing that is filled with fasteners, line by line from above.</summary>
internal readonly record struct PlanBox(double Left, double Top, double Width, double Height, PlanSide Side)
{
    /// <summary>From one fastener to the next where there is room; closer where there is not.</summary>
    private const double WidestStep = 13;

    private const double ClosestStep = 4;

    /// <summary>Middle of every fastener, joint after joint, half a step between two joints of one line.</summary>
    public IEnumerable<PlanPoint> Fill(IReadOnlyList<JointSeen> joints)
    {
        for (var step = WidestStep; ; step--)
        {
            var points = Fill(joints, step);
            if (step <= ClosestStep || points.Count == 0 || points[^1].Y + (step / 2) <= Top + Height)
            {
                return Set(points);
            }
        }
    }

    private IEnumerable<PlanPoint> Set(List<PlanPoint> points)
    {
        var (middle, side) = (Left + (Width / 2), Side);
        return side switch
        {
            PlanSide.Left => points,
            PlanSide.Right => points.Select(point => point with { X = (2 * middle) - point.X }),
            _ => points.GroupBy(point => point.Y).SelectMany(line =>
            {
                var off = middle - ((line.First().X + line.Last().X) / 2);
                return line.Select(point => point with { X = point.X + off });
            }),
        };
    }

    private List<PlanPoint> Fill(IReadOnlyList<JointSeen> joints, double step)
    {
        var points = new List<PlanPoint>();
        var (x, y) = (0d, 0d);
        foreach (var joint in joints)
        {
            // A joint that no longer fits this line, and would fit one of its own, is not torn in two.
            if (x > 0 && x + (joint.Fasteners.Count * step) > Width)
            {
                (x, y) = (0, y + step);
            }

            foreach (var fastener in joint.Fasteners)
            {
                if (x + step > Width)
                {
                    (x, y) = (0, y + step);
                }

                points.Add(new PlanPoint(joint, fastener, Left + x + (step / 2), Top + y + (step / 2), step));
                x += step;
            }

            x += step / 2;
        }

        return points;
    }
}
