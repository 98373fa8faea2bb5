import { type AppliedRecipe, type ApplyRecipeRequest, applyRecipe } from '../image/apply-recipe';

/** Mends a picture apart from the thread that answers requests. */
export function run(request: ApplyRecipeRequest): Promise<AppliedRecipe> {
  return applyRecipe(request);
}
