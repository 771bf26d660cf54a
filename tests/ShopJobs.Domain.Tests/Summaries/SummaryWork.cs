using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

/// <summary>Work that the summary tests start from.</summary>
internal static class SummaryWork
{
    /// <summary>The left wheel through hand-tight and the first stage, wheel down.</summary>
    public static void UpToFinal(this CarAtWork car, JobId job)
    {
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 1);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"seat@{TestRegister.Left}"));
        car.Declare(TestRegister.WheelDown);
    }

    /// <summary>One new stud, driven by its jam pair, the pair taken off again.</summary>
    public static void DriveStud(this CarAtWork car, JobId job, JointPosition stud)
    {
        var jam = stud with { Key = TestRegister.Jam };
        car.FitNew(TestPerson.Tess, job, "studs", stud);
        car.ByHand(TestPerson.Tess, job, "studs", stud);
        car.ByHand(TestPerson.Tess, job, "jam", jam);
        car.Pull(TestPerson.Tess, job, "jam", jam, 1, 90);
        car.Pull(TestPerson.Tess, job, "studs", stud, 1, 73);
        car.Open(TestPerson.Tess, job, jam);
    }
}
