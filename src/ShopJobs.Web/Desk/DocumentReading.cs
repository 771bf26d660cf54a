using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Desk;

internal static class DocumentReading
{
    public static JointRegister Register(byte[] yaml) => throw new NotSupportedException(yaml.Length.ToString(System.Globalization.CultureInfo.InvariantCulture));

    public static Procedure Procedure(byte[] yaml, JointRegister register) => throw new NotSupportedException(yaml.Length + register.Title);
}
