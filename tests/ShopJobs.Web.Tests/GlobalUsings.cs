global using SignatureDesk = ShopJobs.Web.Accounts.SignatureProof.Desk;
