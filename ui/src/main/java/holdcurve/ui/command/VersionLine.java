package holdcurve.ui.command;

import holdcurve.ui.about.Build;
import picocli.CommandLine.IVersionProvider;

/** Answers {@code --version}; read only when asked, since every command declares it. */
final class VersionLine implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"Holdcurve " + Build.version(), Build.platform()};
  }
}
