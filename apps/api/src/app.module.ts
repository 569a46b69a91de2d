import { type DynamicModule, Module } from '@nestjs/common';
import { AuditModule } from './audit/audit.module.ts';
import { BatchModule } from './batch/batch.module.ts';
import { CloneModule } from './clone/clone.module.ts';
import { ChangeModule } from './change/change.module.ts';
import { ClimateModule } from './climate/climate.module.ts';
import { ComparisonModule } from './comparison/comparison.module.ts';
import { SETTINGS } from './config/settings.token.ts';
import type { Settings } from './config/settings.ts';
import { DatabaseModule } from './database/database.module.ts';
import { DeterminationModule } from './determination/determination.module.ts';
import { DeviceModule } from './device/device.module.ts';
import { DonorTreeModule } from './donor-tree/donor-tree.module.ts';
import { DueModule } from './due/due.module.ts';
import { EntryModule } from './entry/entry.module.ts';
import { ExactPlaceModule } from './exact-place/exact-place.module.ts';
import { HoldModule } from './hold/hold.module.ts';
import { HttpModule } from './http/http.module.ts';
import { KeyModule } from './key/key.module.ts';
import { IncidentModule } from './incident/incident.module.ts';
import { LabelModule } from './label/label.module.ts';
import { NewsModule } from './news/news.module.ts';
import { OpenApiModule } from './openapi/openapi.module.ts';
import { PackModule } from './pack/pack.module.ts';
import { PartnerModule } from './partner/partner.module.ts';
import { ImportModule } from './import/import.module.ts';
import { PeopleModule } from './people/people.module.ts';
import { PermissionModule } from './permission/permission.module.ts';
import { PhotoModule } from './photo/photo.module.ts';
import { PlaceModule } from './place/place.module.ts';
import { PlanModule } from './plan/plan.module.ts';
import { ProgrammeModule } from './programme/programme.module.ts';
import { RecipeModule } from './recipe/recipe.module.ts';
import { ReadingModule } from './reading/reading.module.ts';
import { RequestModule } from './request/request.module.ts';
import { RegimeModule } from './regime/regime.module.ts';
import { ReportModule } from './report/report.module.ts';
import { ReviewModule } from './review/review.module.ts';
import { RoundModule } from './round/round.module.ts';
import { SealModule } from './seal/seal.module.ts';
import { SecondOpinionModule } from './second-opinion/second-opinion.module.ts';
import { SignInModule } from './sign-in/sign-in.module.ts';
import { SiteModule } from './site/site.module.ts';
import { StandModule } from './stand/stand.module.ts';
import { TaxonModule } from './taxon/taxon.module.ts';
import { ForecastModule } from './forecast/forecast.module.ts';
import { LostLabelModule } from './lost-label/lost-label.module.ts';
import { LeaveOrCallModule } from './leave-or-call/leave-or-call.module.ts';
import { TimeToRootModule } from './time-to-root/time-to-root.module.ts';
import { TraceModule } from './trace/trace.module.ts';
import { TreatmentModule } from './treatment/treatment.module.ts';
import { TripModule } from './trip/trip.module.ts';
import { WorkListModule } from './work-list/work-list.module.ts';
import { WorkdayModule } from './workday/workday.module.ts';

/** The list of features: the table of contents. */
@Module({})
export class AppModule {
  static with(settings: Settings): DynamicModule {
    return {
      module: AppModule,
      global: true,
      imports: [
        DatabaseModule, HttpModule, AuditModule, SignInModule, ProgrammeModule, PeopleModule, EntryModule, TaxonModule,
        StandModule, DonorTreeModule, ExactPlaceModule, PermissionModule, TripModule, RecipeModule, PlaceModule,
        SiteModule, PartnerModule, KeyModule, WorkdayModule, ImportModule, ReadingModule, OpenApiModule, BatchModule,
        LabelModule, RoundModule, ReviewModule, TimeToRootModule, LeaveOrCallModule, LostLabelModule, ForecastModule, TraceModule, DeterminationModule, DeviceModule, CloneModule, WorkListModule,
        RequestModule, HoldModule, RegimeModule, ClimateModule, IncidentModule, TreatmentModule, DueModule, NewsModule,
        ReportModule, ChangeModule, ComparisonModule,
        SecondOpinionModule, PlanModule, PackModule, PhotoModule, SealModule,
      ],
      providers: [{ provide: SETTINGS, useValue: settings }],
      exports: [SETTINGS],
    };
  }
}
