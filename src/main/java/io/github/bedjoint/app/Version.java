package io.github.bedjoint.app;

import picocli.CommandLine.IVersionProvider;

/** Says which version of the library this is; the build writes it into the manifest. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"bedjoint " + (version == null ? "built from source" : version)};
    }
}
