package fifthform.curves.plan;
import java.util.*; import java.nio.charset.*; import fifthform.curves.recipe.*; import fifthform.curves.setup.*;
class PlanTryout { @org.junit.jupiter.api.Test void x() throws Exception {
 String t=new String(getClass().getResourceAsStream("/recipes/dark.recipe").readAllBytes(),StandardCharsets.UTF_8);
 Recipe r=RecipeText.parse("dark",t).fold(a->a,p->{throw new RuntimeException(p.toString());});
 for (double g: new double[]{300,800,2000}) for (BowlMaterial m: List.of(BowlMaterial.STEEL,BowlMaterial.GLASS)) {
 long n=System.nanoTime();
 BatchPlan p=BatchPlan.of(new PlanRequest(r,g,new Bowl("b",m,OptionalDouble.empty(),Optional.empty()),OptionalDouble.of(g*.4),OptionalDouble.of(800),BowlMaterial.STEEL,OptionalDouble.empty(),OptionalDouble.of(16),OptionalDouble.empty(),true,new PlanRequest.Room(OptionalDouble.of(21),OptionalDouble.of(50)),OptionalDouble.of(80)));
 System.out.println("== "+g+" "+m+" "+(System.nanoTime()-n)/1e6+" ms "+p.caveats()+p.warmBaths());
 if (g==800) for (Planned f: p.figures()) System.out.printf("%s %.2f (%.2f..%.2f) %s%n",f.key(),f.value(),f.low(),f.high(),f.formula());
 else for (Planned f: p.figures()) if (f.key().name().matches("COLD_.*|WARM_.*|QUICK.*")) System.out.printf("%s %.2f (%.2f..%.2f)%n",f.key(),f.value(),f.low(),f.high());
 }}}
